package weekwright.desk.export;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import weekwright.desk.view.plan.WallPage;

/** A week for the wall: a page of HTML, or a sheet of A4 lying on its side, in letters as large as fit. */
public final class Wall {
    private static final List<String> SIZES = List.of("size-11", "size-10", "size-9", "size-8", "size-7", "size-6");

    private Wall() {}

    /** The file in UTF-8; it asks for nothing else. */
    public static byte[] html(WallPage page) {
        return shown(page, HtmlPages.NOWHERE);
    }

    /** The page in UTF-8 as the desk shows it, with a way back to an address of the desk. */
    public static byte[] shown(WallPage page, String back) {
        return text(page, SIZES.get(1), back).getBytes(StandardCharsets.UTF_8);
    }

    /** The sheet for paper; several where the smallest letters do not do it. */
    public static byte[] pdf(WallPage page) {
        String size = SIZES.stream()
                .filter(one -> PdfPages.count(text(page, one)) == 1)
                .findFirst()
                .orElse(SIZES.get(SIZES.size() - 2));
        return PdfPages.of(text(page, size));
    }

    /** Letters that the font for paper lacks. */
    public static String lacking(WallPage page) {
        return PdfPages.lacking(text(page, SIZES.get(0)));
    }

    private static String text(WallPage page, String size) {
        return text(page, size, HtmlPages.NOWHERE);
    }

    private static String text(WallPage page, String size, String back) {
        return HtmlPages.of("wall.jte", "wall.css", Map.of("page", page, "size", size, "back", back));
    }
}
