package weekwright.engine.problem;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The sets of people whom things are for, each once, and which of them a session can do without. A set of a session knows
 * its group, whose quorum decides; one of something fixed has none.
 */
final class Audiences {
    @SuppressWarnings("ArrayRecordComponent")
    private record Audience(int group, int[] cohorts) {
        boolean is(int otherGroup, int[] others) {
            return group == otherGroup && Arrays.equals(cohorts, others);
        }
    }

    private final List<Audience> all = new ArrayList<>();
    private boolean[][] alone = {};

    /** The number of a set of cohorts, in order, for whom something of a group is; -1 stands for no group. */
    int of(int group, int[] cohorts) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).is(group, cohorts)) {
                return i;
            }
        }
        all.add(new Audience(group, cohorts));
        return all.size() - 1;
    }

    /** Works out which sets are few among which, once all are known. */
    void compare(List<Cohort> cohorts, List<GroupInfo> groups) {
        alone = new boolean[all.size()][all.size()];
        for (int session = 0; session < alone.length; session++) {
            Audience ours = all.get(session);
            int most = ours.group < 0 ? -1 : most(groups.get(ours.group).group.quorum(), heads(cohorts, ours.cohorts));
            for (int thing = 0; thing < alone.length; thing++) {
                alone[thing][session] = heads(cohorts, common(all.get(thing).cohorts, ours.cohorts)) <= most;
            }
        }
    }

    /** Most people of so many whom a group's session can do without. */
    static int most(double quorum, int heads) {
        return BigDecimal.ONE
                .subtract(BigDecimal.valueOf(quorum))
                .multiply(BigDecimal.valueOf(heads))
                .setScale(0, RoundingMode.FLOOR)
                .intValue();
    }

    private static int heads(List<Cohort> cohorts, int[] some) {
        return Arrays.stream(some).map(cohort -> cohorts.get(cohort).heads()).sum();
    }

    private static int[] common(int[] some, int[] others) {
        return Arrays.stream(some)
                .filter(cohort -> Arrays.binarySearch(others, cohort) >= 0)
                .toArray();
    }

    /** Whether those of a session's people whom a thing is for are so few that the session can do without them. */
    boolean alone(int thing, int session) {
        return alone[thing][session];
    }

    /** The cohorts of a set, in order. */
    int[] cohorts(int audience) {
        return all.get(audience).cohorts;
    }

    /** Whether a set has a cohort among its people. */
    boolean has(int audience, int cohort) {
        return Arrays.binarySearch(all.get(audience).cohorts, cohort) >= 0;
    }

    /** The group whose session a set is for, or -1. */
    int group(int audience) {
        return all.get(audience).group;
    }

    int count() {
        return all.size();
    }
}
