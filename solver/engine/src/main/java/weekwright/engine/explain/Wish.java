package weekwright.engine.explain;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.AimInfo;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Session;
import weekwright.model.rulebook.RuleLevel;

/**
 * Something asked for: by itself it may be easy to have, and with others impossible.
 *
 * @param id name in documents
 * @param level what it costs not to have it; a pin is never given up by itself and counts as a must
 * @param aim the aim whose least is owed in the week, or null
 * @param held the session that the coach holds, or null
 * @param name what it is, in words
 */
record Wish(
        String id,
        RuleLevel level,
        GroupInfo group,
        int week,
        @Nullable AimInfo aim,
        @Nullable Session held,
        String name) {
    /** Whether it is what the coach holds of a session. */
    boolean isPin() {
        return held != null;
    }
}
