package weekwright.desk.export;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/** Pages for paper as HTML, each a file that asks for nothing else. */
final class HtmlPages {
    /** Where the build puts what it makes of the templates. */
    private static final String TEMPLATES = "weekwright.desk.templates";

    /** In place of an address: a file that is given out leads nowhere. */
    static final String NOWHERE = "";

    private HtmlPages() {}

    /**
     * A page as text.
     *
     * @param style name of its style beside this class; the template gets it as {@code style}
     */
    static String of(String template, String style, Map<String, Object> parameters) {
        TemplateEngine engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
        TemplateOutput output = new StringOutput();
        Map<String, Object> all = new HashMap<>(parameters);
        all.put("style", style(style));
        engine.render(template, all, output);
        return output.toString();
    }

    private static String style(String name) {
        try (InputStream in = HtmlPages.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the style " + name + " cannot be read", e);
        }
    }
}
