package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import weekwright.engine.explain.Breakage.RuleAt;
import weekwright.model.answer.Change;
import weekwright.model.answer.Comparison;
import weekwright.model.answer.Shift;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;

/** Holds two judged plans side by side: what moved, was added and dropped, and which rules are kept better or worse. */
public final class Comparisons {
    private Comparisons() {}

    /**
     * Two plans of one scenario.
     *
     * @param before a plan with its totals and findings, as all that follow
     */
    public static Comparison of(Scenario scenario, Plan before, Plan after) {
        List<Change> sessions = SessionChanges.between(scenario, before, after);
        return new Comparison(
                totals(before),
                null,
                totals(after),
                List.of(),
                sessions,
                shifts(before, after, true),
                shifts(before, after, false),
                ComparisonWording.of(sessions, totals(before), totals(after)));
    }

    /**
     * A plan, and another one made after the scenario has changed.
     *
     * @param scenario the scenario as it is now
     * @param before the first plan, judged under the scenario as it was
     * @param changed the same plan, judged under the scenario as it is now
     * @param after the second plan, judged under the scenario as it is now
     */
    public static Comparison underChange(Scenario scenario, Plan before, Plan changed, Plan after) {
        List<Change> sessions = SessionChanges.between(scenario, changed, after);
        List<Finding> broke = new Breakage(changed).newly(new Breakage(before));
        return new Comparison(
                totals(before),
                totals(changed),
                totals(after),
                broke.stream().map(Findings::said).toList(),
                sessions,
                shifts(before, after, true),
                shifts(before, after, false),
                ComparisonWording.underChange(sessions, broke, before, changed, after));
    }

    /** How a judged plan stands. */
    static Totals totals(Plan judged) {
        return Objects.requireNonNull(judged.totals(), "plans are judged before they are compared");
    }

    private static List<Shift> shifts(Plan before, Plan after, boolean better) {
        Breakage was = new Breakage(before);
        Breakage is = new Breakage(after);
        List<Shift> shifts = new ArrayList<>();
        Stream.concat(was.rules().stream(), is.rules().stream())
                .distinct()
                .filter(rule -> better ? is.cost(rule) < was.cost(rule) : is.cost(rule) > was.cost(rule))
                .sorted(Comparator.comparing(RuleAt::level)
                        .thenComparing(rule -> -Math.abs(is.cost(rule) - was.cost(rule)))
                        .thenComparing(rule -> Rulebook.builtIn()
                                .rules()
                                .indexOf(Rulebook.builtIn().rule(rule.rule()))))
                .forEach(rule -> shifts.add(shift(rule, was, is)));
        return shifts;
    }

    private static Shift shift(RuleAt rule, Breakage was, Breakage is) {
        long before = was.cost(rule);
        long after = is.cost(rule);
        String example = after < before ? " Before: " + was.worst(rule, is) : " Now: " + is.worst(rule, was);
        String text = Rulebook.builtIn().rule(rule.rule()).title() + ": "
                + ComparisonWording.shift(rule.level(), before, after) + example;
        return new Shift(rule.rule(), rule.level(), before / 10.0, after / 10.0, text);
    }
}
