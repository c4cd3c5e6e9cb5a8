package weekwright.engine.recalculation;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;

/**
 * Who breaks what, and for how many points. Everybody's part of one breach (one rule, one set of subjects) is added up
 * before anything is rounded.
 */
final class Ledger {
    private record Breach(String rule, String subjects) {}

    private record Sum(String group, RuleLevel owed, Fraction points) {}

    private final Map<String, RuleSettings> settings;
    private final Map<Breach, Sum> sums = new LinkedHashMap<>();

    Ledger(Map<String, RuleSettings> settings) {
        this.settings = settings;
    }

    /**
     * One person's part of a breach.
     *
     * @param group whose settings hold and by whose heads the share is taken
     * @param points what it would cost were everybody concerned
     * @param share the person's share of the group, or 1 where the breach concerns a session as such
     */
    void add(String rule, String subjects, String group, Fraction points, Fraction share) {
        add(rule, subjects, group, RuleLevel.KEY, points.times(share));
    }

    /** The same for what is owed as key or as main. */
    void add(String rule, String subjects, String group, RuleLevel owed, Fraction points) {
        sums.merge(
                new Breach(rule, subjects),
                new Sum(group, owed, points),
                (before, now) ->
                        new Sum(before.group(), before.owed(), before.points().plus(now.points())));
    }

    /** Whether anything is written against the rule. */
    boolean holds(String rule) {
        return sums.keySet().stream().anyMatch(breach -> breach.rule().equals(rule));
    }

    Recalculation.Result result() {
        Map<RuleLevel, Long> totals = new TreeMap<>();
        Map<String, Recalculation.RuleSum> rules = new TreeMap<>();
        sums.forEach((breach, sum) -> {
            RuleLevel level = settings.get(sum.group()).level(breach.rule());
            long cost = cost(breach.rule(), sum, level);
            if (cost > 0) {
                boolean owed = level == RuleLevel.KEY || level == RuleLevel.MAIN;
                totals.merge(owed ? sum.owed() : level, cost, Long::sum);
                rules.merge(breach.rule(), new Recalculation.RuleSum(1, cost), Recalculation.RuleSum::plus);
            }
        });
        return new Recalculation.Result(
                totals.getOrDefault(RuleLevel.MUST, 0L),
                totals.getOrDefault(RuleLevel.KEY, 0L),
                totals.getOrDefault(RuleLevel.MAIN, 0L),
                totals.getOrDefault(RuleLevel.WANT, 0L),
                rules);
    }

    /** The cost in tenths: 1 for a must, the points for the rest, a want's weighed; rounded once, half up. */
    private long cost(String rule, Sum sum, RuleLevel level) {
        Fraction tenths = sum.points().times(10);
        return switch (level) {
            case MUST -> 10;
            case KEY, MAIN -> tenths.roundedHalfUp();
            case WANT ->
                tenths.times(Fraction.of(settings.get(sum.group()).weightMilli(rule), 1000))
                        .roundedHalfUp();
            case TOLD, OFF -> 0;
        };
    }
}
