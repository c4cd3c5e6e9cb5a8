package weekwright.engine.explain;

import weekwright.engine.rules.JudgedRule;
import weekwright.model.rulebook.RuleLevel;

/**
 * A breach that counts, in as few words as a what-if needs.
 *
 * @param tenths what it adds to the total of its rule's level, in tenths
 */
record Broken(Key key, JudgedRule rule, int tenths) {
    /** Whether it must not be. */
    boolean must() {
        return rule.level() == RuleLevel.MUST;
    }
}
