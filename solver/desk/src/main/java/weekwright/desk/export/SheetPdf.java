package weekwright.desk.export;

import java.util.Collections;
import java.util.List;
import weekwright.desk.view.sheet.SheetPage;
import weekwright.desk.view.sheet.SheetPage.Lane;

/** A day sheet for paper: A4, a group a page where letters of 7 points do it. Nothing is fetched from anywhere. */
public final class SheetPdf {
    private static final List<String> SIZES = List.of("size-12", "size-11", "size-10", "size-9", "size-8", "size-7");

    private SheetPdf() {}

    /** The pages; the same sheet gives the same bytes. */
    public static byte[] of(SheetPage page) {
        List<String> sizes = page.lanes().stream().map(lane -> size(page, lane)).toList();
        return PdfPages.of(SheetHtml.text(page, sizes));
    }

    /** Letters of a page that the font lacks, each once; they would be left out of the pages. */
    public static String lacking(SheetPage page) {
        return PdfPages.lacking(
                SheetHtml.text(page, Collections.nCopies(page.lanes().size(), SIZES.get(0))));
    }

    /** The largest letters in which a group fits on a page; the smallest where none do. */
    private static String size(SheetPage page, Lane lane) {
        SheetPage alone = new SheetPage(page.title(), page.day(), page.who(), List.of(lane), page.cautions());
        int first = 0;
        int last = SIZES.size() - 1;
        while (first < last) {
            int middle = (first + last) / 2;
            if (PdfPages.count(SheetHtml.text(alone, List.of(SIZES.get(middle)))) == 1) {
                last = middle;
            } else {
                first = middle + 1;
            }
        }
        return SIZES.get(first);
    }
}
