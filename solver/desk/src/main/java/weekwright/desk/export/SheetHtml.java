package weekwright.desk.export;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import weekwright.desk.view.SheetPage;

/** A day sheet as one HTML file: it asks for nothing else, and a phone can show it. */
public final class SheetHtml {
    /** Where the build puts what it makes of the templates. */
    private static final String TEMPLATES = "weekwright.desk.templates";

    private static final String USUAL_SIZE = "size-11";

    private SheetHtml() {}

    /** The page in UTF-8. */
    public static byte[] of(SheetPage page) {
        List<String> sizes = Collections.nCopies(page.lanes().size(), USUAL_SIZE);
        return text(page, sizes).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The page as text.
     *
     * @param sizes class of the letters' size of each group
     */
    static String text(SheetPage page, List<String> sizes) {
        TemplateEngine engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
        TemplateOutput output = new StringOutput();
        engine.render("sheet.jte", Map.of("page", page, "style", style(), "sizes", sizes), output);
        return output.toString();
    }

    private static String style() {
        try (InputStream in = SheetHtml.class.getResourceAsStream("sheet.css")) {
            return new String(Objects.requireNonNull(in, "sheet.css").readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the style of the sheet cannot be read", e);
        }
    }
}
