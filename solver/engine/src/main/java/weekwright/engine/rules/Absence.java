package weekwright.engine.rules;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Stimulus;

/**
 * Why a cohort sits a session out.
 *
 * @param why what stands in the way
 * @param first what comes first for it, where it is one thing; else null
 */
public record Absence(Why why, @Nullable Stimulus first) {
    /** What stands in the way of coming, as far as it is theirs alone. */
    public enum Why {
        /** They are away then, or it lies outside their own hours. */
        OWN_TIMES,
        /** Something else at that time, or too near to it. */
        ANOTHER_THING,
        /** It would be a visit too many on one day. */
        VISITS,
        /** It would be a high day too many in a row. */
        HIGH_DAYS_RUNNING,
        /** It would be a high day too many in the week. */
        HIGH_DAYS,
        /** It would take the day off from the week. */
        FREE_DAY,
        /** Its day's hard work would lie too near to that of another day. */
        HARD_WORK
    }

    static final Absence OWN = new Absence(Why.OWN_TIMES, null);

    static Absence of(Why why) {
        return new Absence(why, null);
    }
}
