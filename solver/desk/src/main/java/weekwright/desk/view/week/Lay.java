package weekwright.desk.view.week;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.plan.Entries.Laid;
import weekwright.desk.view.week.TimeAxis.Stretch;

/**
 * What a lane shows, whatever it is a lane of.
 *
 * @param laid all that lies in it
 * @param days what each of its days asks, in order
 * @param shut time that it cannot have
 */
record Lay(String id, String label, @Nullable String note, List<Laid> laid, List<Hill> days, Shut shut) {
    /**
     * A day's hill.
     *
     * @param height 0 to about 10
     * @param look how it is filled
     */
    record Hill(
            LocalDate date,
            @Nullable Integer matchDay,
            double height,
            String look,
            String word,
            String points,
            String amount) {}

    /** A stretch that cannot be had. */
    record Closed(String kind, Stretch stretch, @Nullable String why) {}

    /** Says what of a date cannot be had. */
    interface Shut {
        List<Closed> on(LocalDate date);

        /** The stretches of a date between which the lane is open; none where it is always. */
        List<Stretch> open(LocalDate date);
    }
}
