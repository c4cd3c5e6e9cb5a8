package weekwright.engine.explain;

import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.GroupInfo;

/** Days told by their distance from a fixture, as coaches count them. */
final class MatchDays {
    private static final int DAYS_AHEAD = 6;
    private static final int DAYS_AFTER = 2;
    private static final int FAR = 3;

    private MatchDays() {}

    /** MD+1 and MD+2 as 1 and 2 while the next fixture is still far; otherwise days to it as -6 to 0; null if none. */
    static @Nullable Integer of(GroupInfo group, int day) {
        Integer ahead = daysTo(group, day, 1, DAYS_AHEAD);
        Integer after = daysTo(group, day, -1, DAYS_AFTER);
        if (ahead == null || (after != null && after > 0 && ahead > FAR)) {
            return after;
        }
        return -ahead;
    }

    /** In brackets after a space, e.g. {@code  (MD−2)}; empty where no fixture is near. */
    static String inBrackets(GroupInfo group, int day) {
        Integer distance = of(group, day);
        if (distance == null) {
            return "";
        }
        String far = distance == 0 ? "" : distance < 0 ? "−" + -distance : "+" + distance;
        return " (MD" + far + ")";
    }

    private static @Nullable Integer daysTo(GroupInfo group, int day, int step, int most) {
        for (int distance = 0; distance <= most; distance++) {
            if (group.fixtureOn(day + step * distance)) {
                return distance;
            }
        }
        return null;
    }
}
