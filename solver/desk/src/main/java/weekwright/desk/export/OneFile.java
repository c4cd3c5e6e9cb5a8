package weekwright.desk.export;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/** Fills a template that makes a page of one file; all text that comes from documents is escaped in it. */
final class OneFile {
    /** Where the build puts what it makes of the templates. */
    private static final String TEMPLATES = "weekwright.desk.templates";

    private OneFile() {}

    /** The page in UTF-8. */
    static byte[] of(String template, Map<String, Object> values) {
        Utf8ByteOutput output = new Utf8ByteOutput();
        TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES)
                .render(template, values, output);
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            output.writeTo(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A style sheet that lies beside this class. */
    static String style(String name) {
        try (InputStream in = OneFile.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the style of a page cannot be read", e);
        }
    }
}
