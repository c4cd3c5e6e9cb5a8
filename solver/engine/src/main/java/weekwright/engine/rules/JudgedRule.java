package weekwright.engine.rules;

import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;

/**
 * A rule as it holds for one group: its level, its weight, and its numbers read once. A judge is a pure function of what
 * it is shown: it reads no clock, draws no lots and remembers nothing.
 */
public abstract class JudgedRule {
    /** Units of cost in one point: a minute of a wanted hour is 20 units, so that halves and three halves are whole. */
    static final int POINT = 1200;

    private final String id;
    private final RuleSettings settings;
    private final RuleLevel level;
    private final int weightMilli;
    private final int pointsPerBreach;

    JudgedRule(String id, RuleSettings settings) {
        this(id, settings, settings.level(id));
    }

    JudgedRule(String id, RuleSettings settings, RuleLevel level) {
        this.id = id;
        this.settings = settings;
        this.level = level;
        weightMilli = settings.weightMilli(id);
        pointsPerBreach = settings.has(id, "points") ? points("points") : POINT;
    }

    /** The rule's id in the rulebook. */
    public final String id() {
        return id;
    }

    /** How much it matters to this group. */
    public final RuleLevel level() {
        return level;
    }

    /** What its cost is multiplied by, in thousandths. */
    public final int weightMilli() {
        return weightMilli;
    }

    /** Minutes by which a wanted gap may be short at no cost; 0 for rules that are not about wanted hours. */
    public final int toleranceMinutes() {
        return settings.has(id, "toleranceHours") ? minutes("toleranceHours") : 0;
    }

    /** Units of cost of a breach that is not costed by its amount. */
    final int pointsPerBreach() {
        return pointsPerBreach;
    }

    /** A number of the rule, as it stands. */
    final double number(String name) {
        return settings.number(id, name);
    }

    /** A number of the rule given in hours, in minutes. */
    final int minutes(String name) {
        return (int) Math.round(number(name) * 60);
    }

    /** A number of the rule given in points, in units of cost. */
    final int points(String name) {
        return (int) Math.round(settings.number(id, name) * POINT);
    }

    /** A number of the rule given in points, of another rule, in units of cost. */
    final int pointsOf(String rule, String name) {
        return (int) Math.round(settings.number(rule, name) * POINT);
    }

    /** The settings that hold for the group. */
    final RuleSettings settings() {
        return settings;
    }
}
