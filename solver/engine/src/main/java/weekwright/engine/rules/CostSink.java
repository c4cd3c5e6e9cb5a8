package weekwright.engine.rules;

import weekwright.engine.problem.Cost;
import weekwright.model.rulebook.RuleLevel;

/** Adds up what breaches cost, by level and as one weighted sum for the search. */
final class CostSink implements Sink {
    /**
     * Dearest single want, in tenths: a key fixture's margin missed by the most that the catalogue can ask. A main
     * session weighs four of them, a key one three main ones, a must one and a half key ones, so that the weighted walk
     * may pass a breach but does not stay there.
     */
    private static final int DEAREST_WANT = 660;

    private static final int MAIN = 4 * DEAREST_WANT;
    private static final int KEY = 3 * MAIN;
    private static final int MUST = KEY * 3 / 2;
    private static final int MOST_AMOUNT = 3;

    private Cost into = new Cost();

    /** Says where the next costs go. */
    CostSink into(Cost cost) {
        into = cost;
        return this;
    }

    @Override
    public void breach(JudgedRule rule, View view, Breach breach, int groupHeads) {
        if (breach.isTold()) {
            return;
        }
        RuleLevel level = rule.level();
        if (level == RuleLevel.MUST) {
            into.must += Price.ONE;
            into.mustSlope += MUST + amount(breach);
        } else if (level == RuleLevel.KEY) {
            int tenths = Price.tenths(rule, breach, groupHeads);
            into.key += tenths;
            into.restSlope += (long) KEY * tenths / Price.ONE;
        } else if (level == RuleLevel.MAIN) {
            int tenths = Price.tenths(rule, breach, groupHeads);
            into.main += tenths;
            into.restSlope += (long) MAIN * tenths / Price.ONE;
        } else if (level == RuleLevel.WANT) {
            int tenths = Price.tenths(rule, breach, groupHeads);
            into.want += tenths;
            into.restSlope += tenths;
        }
    }

    /** How much a must is broken, so that the search feels its way down: its amount over its limit, at most threefold. */
    private static long amount(Breach breach) {
        long amount = Math.abs((long) breach.limit() - breach.measured());
        long limit = Math.max(1, Math.abs(breach.limit()));
        return Math.min(MOST_AMOUNT * limit, amount) * MUST / limit;
    }
}
