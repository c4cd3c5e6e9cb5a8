package weekwright.desk.export;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import weekwright.desk.view.BriefPage;

/** A week for those who lead the team as one HTML file that asks for nothing else: a group a page of A4, in black. */
public final class BriefHtml {
    private BriefHtml() {}

    /** The page in UTF-8. */
    public static byte[] of(BriefPage page) {
        return HtmlPages.of("brief.jte", "brief.css", Map.of("page", page)).getBytes(StandardCharsets.UTF_8);
    }
}
