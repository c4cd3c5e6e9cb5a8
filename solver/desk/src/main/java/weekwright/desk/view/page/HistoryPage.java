package weekwright.desk.view.page;

import java.time.temporal.ChronoUnit;
import java.util.List;
import weekwright.desk.store.Revision;
import weekwright.desk.view.Dates;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/**
 * The changes that a folder keeps, the newest first.
 *
 * @param base address of the folder
 * @param revision the revision in force
 */
public record HistoryPage(String base, String title, int revision, List<Entry> entries) {
    public HistoryPage {
        entries = List.copyOf(entries);
    }

    /**
     * A change.
     *
     * @param beside whether it came late and is only kept
     * @param planned whether it holds a plan
     */
    public record Entry(int number, String when, String label, boolean inForce, boolean beside, boolean planned) {}

    /** The page of some revisions. */
    public static HistoryPage of(String base, Scenario scenario, int head, List<Revision> revisions) {
        return new HistoryPage(
                base,
                scenario.title(),
                head,
                revisions.stream().map(one -> entry(one, scenario, head)).toList());
    }

    private static Entry entry(Revision revision, Scenario scenario, int head) {
        Moment at = Moment.at(revision.at().truncatedTo(ChronoUnit.MINUTES), scenario.zone());
        return new Entry(
                revision.number(),
                Dates.day(at.date()) + " " + Dates.clock(at),
                revision.label(),
                revision.number() == head,
                revision.beside(),
                revision.files().containsKey("plan.json"));
    }
}
