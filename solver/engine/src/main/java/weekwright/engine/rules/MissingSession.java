package weekwright.engine.rules;

import weekwright.engine.problem.AimInfo;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;
import weekwright.model.scenario.Priority;

/**
 * What one missing session of an aim adds to the totals, by the rules as they are set for its group.
 *
 * @param level the level that it adds to; told where the rule is switched off
 * @param cost what it adds: 1 for a must, nothing where it is only told
 */
public record MissingSession(RuleLevel level, double cost) {
    /**
     * A session missing from an aim.
     *
     * @param owed whether it is one of the least, and not only of the target
     */
    public static MissingSession of(AimInfo aim, boolean owed) {
        RuleSettings settings = aim.group.settings;
        boolean least = owed && aim.aim.priority() != Priority.SPARE;
        JudgedRule rule =
                least ? new AimRules.AimLeast(settings, aim.aim.priority()) : new AimRules.AimTarget(settings);
        RuleLevel level = rule.level() == RuleLevel.OFF ? RuleLevel.TOLD : rule.level();
        if (level == RuleLevel.TOLD) {
            return new MissingSession(level, 0);
        }
        Breach breach = new Breach().none();
        int units = least ? AimRules.AimLeast.units(rule) : AimRules.aimPoints(rule, aim);
        breach.addAmount(aim.group.heads, units, 0, 1);
        return new MissingSession(level, Price.tenths(rule, breach, aim.group.heads) / (double) Price.ONE);
    }
}
