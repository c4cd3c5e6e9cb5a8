package weekwright.desk.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.Map;
import weekwright.desk.view.page.Frame;
import weekwright.desk.view.page.Notice;

/** Fills templates. All text that comes from documents is escaped in them. */
final class Templates {
    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "weekwright.desk.templates");
    private final Frame frame;

    Templates(Frame frame) {
        this.frame = frame;
    }

    /** Answers with a whole page. */
    void page(Context request, String template, Object page) {
        answer(request, template, Map.of("frame", frame, "page", page));
    }

    /** Answers with a part of a page. */
    void part(Context request, String template, String name, Object value) {
        answer(request, template, Map.of(name, value));
    }

    /** Answers with a part of a page that shows several things. */
    void part(Context request, String template, Map<String, Object> values) {
        answer(request, template, values);
    }

    /** Answers with a notice: a part where a part was asked for, else a page. */
    void notice(Context request, int status, Notice notice) {
        request.status(status);
        if (isPart(request)) {
            part(request, "notice.jte", "notice", notice);
        } else {
            answer(request, "notice-page.jte", Map.of("frame", frame, "notice", notice));
        }
    }

    /** Whether the page's script asks, to put the answer into the page. */
    static boolean isPart(Context request) {
        return request.header("HX-Request") != null;
    }

    private void answer(Context request, String template, Map<String, Object> values) {
        request.contentType("text/html; charset=utf-8").result(filled(template, values));
    }

    /** The text of a whole page. */
    String text(String template, Object page) {
        return filled(template, Map.of("frame", frame, "page", page));
    }

    private String filled(String template, Map<String, Object> values) {
        StringOutput text = new StringOutput();
        engine.render(template, values, text);
        return text.toString();
    }
}
