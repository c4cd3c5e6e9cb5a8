package weekwright.engine.explain;

import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.BookingView;
import weekwright.engine.rules.Breach;
import weekwright.engine.rules.GroupView;
import weekwright.engine.rules.Judge;
import weekwright.engine.rules.JudgedRule;
import weekwright.engine.rules.PairView;
import weekwright.engine.rules.PlacementView;
import weekwright.engine.rules.View;

/**
 * What a breach is a breach of, whatever it costs: by it one is found again after a session has moved.
 *
 * @param part part of the plan that it belongs to, or {@link Judge#OWN} or {@link Judge#FIXED}
 * @param rule id of the rule
 * @param subject which of the rule's subjects in that part: a pair of things, a session, a day
 * @param nth how many of this rule and subject were found in that part before it
 */
record Key(int part, String rule, long subject, int nth) {
    private static final int EARLIEST_DAY = 1_000;
    private static final int DAYS = 10_000;
    private static final int INDEXES = 1_000_000;

    /** The key of what a judge has just found. */
    static Key of(int part, JudgedRule rule, View view, Breach breach) {
        return new Key(part, rule.id(), subject(view, breach), 0);
    }

    /** The key of the next one found of the same rule and subject. */
    Key next() {
        return new Key(part, rule, subject, nth + 1);
    }

    private static long subject(View view, Breach breach) {
        if (view instanceof PairView pair) {
            long first = code(pair.first());
            long second = code(pair.second());
            return Math.min(first, second) * INDEXES * 10L + Math.max(first, second);
        }
        if (view instanceof PlacementView placement) {
            Session session = placement.session();
            return session.index;
        }
        if (view instanceof BookingView booking) {
            return code(booking.booking()) * 10 + breach.detail();
        }
        long day = (long) breach.firstDay() + EARLIEST_DAY;
        return view instanceof GroupView ? (long) breach.detail() * DAYS + day : day;
    }

    private static long code(Stimulus thing) {
        return (long) thing.kind.ordinal() * INDEXES + thing.index;
    }
}
