package weekwright.desk.export;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import weekwright.desk.view.sheet.SheetPage;

/** A day sheet as one HTML file: it asks for nothing else, and a phone can show it. */
public final class SheetHtml {
    /** In print only. The letters are the browser's own and may be wide; in these a full day of a group is one page. */
    private static final String USUAL_SIZE = "size-9";

    private SheetHtml() {}

    /** The file in UTF-8. */
    public static byte[] of(SheetPage page) {
        return shown(page, HtmlPages.NOWHERE);
    }

    /** The page in UTF-8 as the desk shows it, with a way back to an address of the desk. */
    public static byte[] shown(SheetPage page, String back) {
        List<String> sizes = Collections.nCopies(page.lanes().size(), USUAL_SIZE);
        return text(page, sizes, back).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The page for paper as text.
     *
     * @param sizes class of the letters' size of each group
     */
    static String text(SheetPage page, List<String> sizes) {
        return text(page, sizes, HtmlPages.NOWHERE);
    }

    private static String text(SheetPage page, List<String> sizes, String back) {
        return HtmlPages.of("sheet.jte", "sheet.css", Map.of("page", page, "sizes", sizes, "back", back));
    }
}
