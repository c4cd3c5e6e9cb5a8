package weekwright.scenarios;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Scenario;

/**
 * The yardstick rules: all musts, key and main, and eight wants; every other want is off. Few enough to be stated a second
 * time for a solver that proves the best plan, and enough to make a week hard.
 */
public final class Yardstick {
    /** The wants that stay on. */
    public static final List<String> WANTS = List.of(
            "pathway-gap",
            "high-block-gap",
            "no-middle-day",
            "freshest-first",
            "high-days-target",
            "aim-target",
            "preferred-time",
            "preferred-facility");

    /** Costs nothing where no plan is to be kept, and is what a change is measured with where one is. */
    private static final String KEEP_PLAN = "keep-plan";

    private Yardstick() {}

    /** The same scenario under the yardstick rules. */
    public static Scenario of(Scenario s) {
        Map<String, RuleSetting> rules = new LinkedHashMap<>(s.rules());
        for (Rule rule : Rulebook.builtIn().rules()) {
            boolean on = WANTS.contains(rule.id()) || rule.id().equals(KEEP_PLAN);
            if (rule.level() == RuleLevel.WANT && !on) {
                rules.put(rule.id(), new RuleSetting(RuleLevel.OFF, null, Map.of()));
            }
        }
        return s.withGroups(s.groups().stream().map(Yardstick::whole).toList()).withRules(rules);
    }

    /** Everybody comes to everything: who could stay away for the sake of a few is not among the rules stated twice. */
    private static Group whole(Group g) {
        return g.withQuorum(1);
    }
}
