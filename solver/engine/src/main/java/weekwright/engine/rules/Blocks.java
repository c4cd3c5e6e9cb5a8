package weekwright.engine.rules;

/** A cohort's high block and its next one: the common walk of the rules about hours from high day to high day. */
final class Blocks {
    /** Days within which the next block is looked for. */
    static final int REACH = 5;

    /** The minutes that must or should lie between two blocks. */
    interface Limit {
        /** Minutes asked for, the later block lying on a day. */
        int of(DayState earlier, DayState later, int laterDay);
    }

    private Blocks() {}

    /**
     * Judges the block of the view's day against the next one of each cohort, which need not lie on the same day for all.
     *
     * @param different only blocks without a high pathway in common
     * @param hours what missed hours cost
     */
    static void judge(
            RuleOn<GroupView> rule, GroupView view, Sink sink, Limit limit, boolean different, HourWant hours) {
        if (!anyBlock(view)) {
            return;
        }
        for (int step = Math.max(1, -view.day()); step <= REACH; step++) {
            int day = view.day() + step;
            Breach breach = view.breach().days(view.day(), day);
            for (int cohort : view.cohorts()) {
                DayState earlier = view.day(cohort, view.day());
                DayState later = view.day(cohort, day);
                boolean pair = earlier.block() && later.block() && isNext(view, cohort, day);
                if (!pair || (different && (earlier.blockHigh & later.blockHigh) != 0)) {
                    continue;
                }
                int gap = later.blockStart - earlier.blockEnd;
                int asked = limit.of(earlier, later, day);
                if (asked > 0 && gap < asked) {
                    boolean fixed = !earlier.blockPlaced && !later.blockPlaced;
                    breach.add(cohort, view.heads(cohort), hours.cost(asked - gap), gap, asked, fixed);
                }
            }
            rule.report(sink, view, breach);
        }
    }

    /** Whether the hours that the harder work of the earlier of two blocks must have are missing, by what we placed. */
    static boolean tooNear(DayState earlier, DayState later) {
        return later.blockStart - earlier.blockEnd < earlier.blockCross
                && (earlier.blockPlaced || later.blockPlaced)
                && earlier.blockCross > 0;
    }

    private static boolean anyBlock(GroupView view) {
        for (int cohort : view.cohorts()) {
            if (view.day(cohort, view.day()).block()) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNext(GroupView view, int cohort, int day) {
        for (int between = view.day() + 1; between < day; between++) {
            if (view.day(cohort, between).block()) {
                return false;
            }
        }
        return true;
    }
}
