package weekwright.model.answer;

import weekwright.model.rulebook.RuleLevel;

/**
 * A rule that is kept better or worse in one plan than in another.
 *
 * @param before what it costs in the first plan
 * @param after what it costs in the second
 */
public record Shift(String rule, RuleLevel level, double before, double after, String text) {}
