package weekwright.desk.export;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import weekwright.desk.view.brief.BriefPage;

/** A week for those who lead the team as one HTML file that asks for nothing else: a group a page of A4, in black. */
public final class BriefHtml {
    private BriefHtml() {}

    /** The file in UTF-8. */
    public static byte[] of(BriefPage page) {
        return shown(page, HtmlPages.NOWHERE);
    }

    /** The page in UTF-8 as the desk shows it, with a way back to an address of the desk. */
    public static byte[] shown(BriefPage page, String back) {
        return HtmlPages.of("brief.jte", "brief.css", Map.of("page", page, "back", back))
                .getBytes(StandardCharsets.UTF_8);
    }
}
