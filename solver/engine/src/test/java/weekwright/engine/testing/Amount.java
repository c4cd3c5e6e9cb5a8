package weekwright.engine.testing;

import weekwright.model.plan.Finding;
import weekwright.model.rulebook.RuleLevel;

/**
 * The figures of a finding: how much it matters, what it costs, what was measured and against what, in the rule's unit.
 */
public record Amount(RuleLevel level, double cost, double measured, double limit) {
    /** The figures of a finding. */
    public static Amount of(Finding finding) {
        return new Amount(finding.level(), finding.cost(), finding.measured(), finding.limit());
    }

    /** A must is one, whatever its amount. */
    public static Amount must(double measured, double limit) {
        return new Amount(RuleLevel.MUST, 1, measured, limit);
    }

    /** A key breach. */
    public static Amount key(double cost, double measured, double limit) {
        return new Amount(RuleLevel.KEY, cost, measured, limit);
    }

    /** A main breach. */
    public static Amount main(double cost, double measured, double limit) {
        return new Amount(RuleLevel.MAIN, cost, measured, limit);
    }

    /** A want, at its points. */
    public static Amount want(double cost, double measured, double limit) {
        return new Amount(RuleLevel.WANT, cost, measured, limit);
    }

    /** A fact at no cost. */
    public static Amount told(double measured, double limit) {
        return new Amount(RuleLevel.TOLD, 0, measured, limit);
    }
}
