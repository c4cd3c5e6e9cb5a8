package weekwright.desk.store;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How long revisions are kept: all for so many days, then the last of each day.
 *
 * @param days days for which all are kept
 * @param least newest ones that are kept whatever the clock says: one that runs wild costs no recent work
 */
record Retention(int days, int least) {
    /** All of 30 days. */
    static final Retention USUAL = new Retention(30, 20);

    /**
     * Those that need not be kept any more.
     *
     * @param all all revisions, the oldest first
     * @param now what time it is
     * @param zone where a day begins and ends
     */
    List<Revision> over(List<Revision> all, Instant now, ZoneId zone) {
        Instant limit = now.minus(Duration.ofDays(days));
        Set<LocalDate> seen = new HashSet<>();
        List<Revision> over = new ArrayList<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            Revision revision = all.get(i);
            boolean lastOfDay = !revision.beside() && seen.add(LocalDate.ofInstant(revision.at(), zone));
            boolean old = revision.at().isBefore(limit) && i < all.size() - least;
            if (old && !lastOfDay) {
                over.add(revision);
            }
        }
        return over;
    }
}
