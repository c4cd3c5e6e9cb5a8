package weekwright.engine.rules;

import weekwright.model.rulebook.RuleLevel;

/** What a breach costs in tenths, for the sums of the search and for findings alike. */
public final class Price {
    /** Tenths in one. */
    static final int ONE = 10;

    private Price() {}

    /** Tenths that a breach adds to the total of its rule's level: one for a must, whatever its amount. */
    public static int tenths(JudgedRule rule, Breach breach, int groupHeads) {
        return rule.level() == RuleLevel.MUST ? ONE : shared(rule, breach.units(), groupHeads);
    }

    /** Tenths of a breach that costs its points in full. */
    static int whole(JudgedRule rule, int units) {
        return shared(rule, units, 1);
    }

    /** Points times heads over the heads of the group, times the rule's weight, rounded once, half up. */
    private static int shared(JudgedRule rule, long units, int groupHeads) {
        long top = 2L * ONE * units * rule.weightMilli();
        long bottom = (long) JudgedRule.POINT * 1000 * groupHeads;
        return (int) Math.floorDiv(top + bottom, 2 * bottom);
    }
}
