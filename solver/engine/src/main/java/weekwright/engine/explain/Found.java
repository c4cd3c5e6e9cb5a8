package weekwright.engine.explain;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Calendar;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;

/**
 * A way that clears a finding, with its price.
 *
 * @param adds ids of rules newly broken
 * @param effort how much of the plan changes, for choosing between ways that cost the same
 */
record Found(Way way, Cost change, List<String> adds, long effort) {
    /** What costs nothing first, then what costs least, then what changes least. */
    static final Comparator<Found> IN_ORDER = Comparator.comparing((Found found) -> !found.free())
            .thenComparing(Found::change, Cost::compareLevels)
            .thenComparing(found -> found.way().ofCoach())
            .thenComparingLong(Found::effort);

    private static final long WHOLE = 1_000_000;
    /** A minute that somebody gives weighs more than all that a session can change. */
    private static final long GIVEN = 1_000 * WHOLE;

    static Found of(Calendar calendar, Way way, Cost change, List<String> adds, @Nullable Stimulus now) {
        return new Found(way, change, adds, effort(calendar, way, now));
    }

    /** Whether it worsens no total and needs nobody but us. */
    boolean free() {
        return !way.ofCoach() && change.must <= 0 && change.key <= 0 && change.main <= 0 && change.want <= 0;
    }

    private static long effort(Calendar calendar, Way way, @Nullable Stimulus now) {
        Session session = way.session();
        Stimulus to = way.to();
        if (session == null) {
            return Long.MAX_VALUE;
        }
        int rank = 0;
        for (boolean heavier : new boolean[] {
            Pins.inTheWay(calendar, session, now, to),
            to == null,
            now == null,
            now != null && to != null && to.day != now.day,
            now != null && to != null && to.dose != now.dose,
            now != null && to != null && to.facility != now.facility,
            to != null && (to.lead >= 0 || to.variant >= 0)
        }) {
            rank = 2 * rank + (heavier ? 1 : 0);
        }
        int apart = now == null || to == null ? 0 : Math.abs(to.start - now.start);
        long given = way.longer() == null ? 0 : way.longer().minutes() * GIVEN;
        return given + rank * WHOLE + 2L * apart + (now != null && to != null && to.start < now.start ? 1 : 0);
    }
}
