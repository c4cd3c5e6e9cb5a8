package weekwright.engine.problem;

import weekwright.model.scenario.Lends;
import weekwright.model.scenario.LendsAt;

/**
 * The minutes that a practice lends to micro sessions of its groups: the first after its own warm-up, or its last.
 *
 * @param from epoch minute at which they begin
 * @param to epoch minute at which they end
 * @param atStart whether what is lent comes before the practice's own work
 */
public record LentTime(int from, int to, boolean atStart) {
    static LentTime of(Lends lends, int start, int end, int warmUp) {
        boolean atStart = lends.at() == LendsAt.START;
        int from = atStart ? start + warmUp : end - lends.minutes();
        return new LentTime(from, atStart ? from + lends.minutes() : end, atStart);
    }

    /** Whether a span lies inside them. */
    boolean holds(int start, int end) {
        return start >= from && end <= to;
    }

    /** Minutes left for the way there, or for the way back where these are fewer; from the last minutes nobody comes back. */
    public int forTheWay(int start, int end) {
        return atStart ? Math.min(start - from, to - end) : start - from;
    }
}
