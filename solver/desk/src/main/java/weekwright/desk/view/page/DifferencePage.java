package weekwright.desk.view.page;

import java.util.List;
import weekwright.desk.view.Words;
import weekwright.desk.view.search.SearchStrip.Changes;
import weekwright.desk.view.search.SearchStrips;
import weekwright.model.answer.Comparison;

/**
 * An older revision beside the one in force.
 *
 * @param base address of the folder
 * @param revision the revision in force
 * @param number the older one
 * @param what what was done in it, in words
 * @param before how it stands, in a sentence
 * @param after how the one in force stands
 * @param text what taking up the newer one has brought, in a sentence
 */
public record DifferencePage(
        String base,
        String title,
        int revision,
        int number,
        String what,
        String before,
        String after,
        String text,
        List<Changes> changes) {
    public DifferencePage {
        changes = List.copyOf(changes);
    }

    /** The page of a comparison. */
    public static DifferencePage of(
            String base, String title, int revision, HistoryPage.Entry entry, Comparison comparison) {
        return new DifferencePage(
                base,
                title,
                revision,
                entry.number(),
                entry.when() + ": " + entry.label(),
                Words.verdict(comparison.before()),
                Words.verdict(comparison.after()),
                comparison.text(),
                SearchStrips.changes(comparison));
    }
}
