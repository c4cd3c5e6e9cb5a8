package weekwright.engine.search;

import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * What a plan weighs for the search: what the rules say, and, where a plan is changed, a price for every session that does
 * not stay where it was. The rule's own price of a change in a draft is small and would let a dozen sessions move for a
 * few points: people have read the old plan.
 */
final class Scale {
    /** Price of a session that moved, in tenths of a point; expert proposal. */
    static final int MOVED = 100;
    /** More than any plan weighs. */
    static final long BEYOND = Long.MAX_VALUE;

    private final Session[] known;

    Scale(Problem problem) {
        known = problem.stayClose == null
                ? new Session[0]
                : problem.sessions.stream()
                        .filter(session -> session.before != null)
                        .toArray(Session[]::new);
    }

    /** What the plan costs by levels, with the price of what has moved among the wants. */
    Cost cost(Judge judge) {
        Cost cost = judge.total().copy();
        cost.want += moved(judge);
        return cost;
    }

    /** The plan as one weighted sum, a must counting so many times. */
    long slope(Judge judge, int mustFactor) {
        return slope(judge.total(), mustFactor) + moved(judge);
    }

    /**
     * What the plan weighs after a move, worked out no further than is needed: {@link #BEYOND} where it weighs a limit or more
     * and is no better than a plan that is kept. Then the move can only be taken back.
     */
    long slopeBelow(Judge judge, int mustFactor, long limit, Incumbent best) {
        long moved = moved(judge);
        boolean whole =
                judge.settleUnless(least -> slope(least, mustFactor) + moved >= limit && best.noneBetterFrom(least));
        return whole ? slope(judge.total(), mustFactor) + moved : BEYOND;
    }

    /** A cost as one weighted sum, without the price of what has moved. */
    static long slope(Cost cost, int mustFactor) {
        return mustFactor * cost.mustSlope + cost.restSlope;
    }

    /** Price of all that has moved. */
    long moved(Judge judge) {
        int moved = 0;
        for (Session session : known) {
            Stimulus now = judge.at(session);
            moved += now == session.before ? 0 : 1;
        }
        return (long) moved * MOVED;
    }
}
