package weekwright.engine.rules;

import java.util.Arrays;
import weekwright.engine.problem.LiftLine;
import weekwright.engine.problem.Stimulus;
import weekwright.model.scenario.Dose;

/**
 * Walks along a lift line, exposure by exposure in order of start, and counts what the rules about lifts count. One count
 * serves the judges and the filling of variants, so that what is filled is what costs least. Micro doses are no exposures.
 */
final class LiftCount {
    /**
     * What exposures are held against.
     *
     * @param weeks most weeks running with a variant at full dose
     * @param exposures fewest exposures in a row to a variant
     * @param testedDays most days from one exposure to a tested variant to the next
     */
    record Limits(int weeks, int exposures, int testedDays) {
        /** No tested lift is to come back. */
        static final int NEVER = Integer.MAX_VALUE;
    }

    private final Limits limits;
    private final boolean[] tested;
    /** Weeks running before the present one, by variant. */
    private final int[] weeksBefore;
    /** Variants at full dose in the present week. */
    private final boolean[] thisWeek;

    private int week = Integer.MIN_VALUE;
    private int variant = LiftLine.UNKNOWN;
    private int block;
    private boolean blockPlaced;
    private int lastTested;

    private int weeksRunning;
    private int leftAfter;
    private int daysUntested;

    /** A count before the first exposure. */
    LiftCount(LiftLine line, Limits limits) {
        this.limits = limits;
        tested = line.tested;
        weeksBefore = new int[tested.length];
        thisWeek = new boolean[tested.length];
    }

    private LiftCount(LiftCount other) {
        limits = other.limits;
        tested = other.tested;
        weeksBefore = other.weeksBefore.clone();
        thisWeek = other.thisWeek.clone();
        week = other.week;
        variant = other.variant;
        block = other.block;
        blockPlaced = other.blockPlaced;
        lastTested = other.lastTested;
    }

    LiftCount copy() {
        return new LiftCount(this);
    }

    /** Takes the next exposure, to a variant or to {@link LiftLine#UNKNOWN}; what it breaks can be asked afterwards. */
    LiftCount step(Stimulus at, int to) {
        weeksRunning = 0;
        leftAfter = 0;
        daysUntested = 0;
        countWeek(at, to);
        countBlock(at.placed(), to);
        if (to >= 0 && tested[to]) {
            countTested(at.day, at.placed());
        }
        return this;
    }

    /** Ends the line with the plan's last day. */
    LiftCount end(int lastDay) {
        weeksRunning = 0;
        leftAfter = 0;
        daysUntested = 0;
        countTested(lastDay, true);
        return this;
    }

    /** A week without any exposure is passed over. */
    private void countWeek(Stimulus at, int to) {
        int now = Math.floorDiv(at.day, 7);
        if (now != week) {
            for (int v = 0; v < thisWeek.length; v++) {
                weeksBefore[v] = thisWeek[v] ? weeksBefore[v] + 1 : 0;
                thisWeek[v] = false;
            }
            week = now;
        }
        if (to >= 0 && at.dose == Dose.FULL && !thisWeek[to]) {
            thisWeek[to] = true;
            boolean beyond = at.placed() && weeksBefore[to] + 1 > limits.weeks;
            weeksRunning = beyond ? weeksBefore[to] + 1 : 0;
        }
    }

    private void countBlock(boolean placed, int to) {
        if (to >= 0 && to == variant) {
            block++;
            blockPlaced |= placed;
            return;
        }
        boolean ended = to >= 0 && variant >= 0 && (blockPlaced || placed);
        leftAfter = ended && block < limits.exposures ? block : 0;
        variant = to;
        block = 1;
        blockPlaced = placed;
    }

    private void countTested(int day, boolean placed) {
        boolean late = placed && limits.testedDays != Limits.NEVER && day - lastTested > limits.testedDays;
        daysUntested = late ? day - lastTested : 0;
        lastTested = day;
    }

    /** Weeks running with the variant of the last step at full dose, in the first step of a week too many; else 0. */
    int weeksRunning() {
        return weeksRunning;
    }

    /** Exposures in the block that the last step ended too soon, else 0. */
    int leftAfter() {
        return leftAfter;
    }

    /** Days without a tested variant that the last step ended too late, else 0. */
    int daysUntested() {
        return daysUntested;
    }

    /** Day of the last exposure to a tested variant; the plan's first where there was none. */
    int lastTested() {
        return lastTested;
    }

    /** The variant of the last exposure. */
    int variant() {
        return variant;
    }

    /** Whether two variants stand alike from here on, so that the one may stand for the other. */
    boolean alike(int v, int w) {
        return v != variant
                && w != variant
                && tested[v] == tested[w]
                && thisWeek[v] == thisWeek[w]
                && Math.min(weeksBefore[v], limits.weeks) == Math.min(weeksBefore[w], limits.weeks);
    }

    /** All that what follows depends on, for placements from here on. */
    Key key(int steps) {
        int[] parts = new int[tested.length + 5];
        parts[0] = steps;
        parts[1] = week;
        parts[2] = variant;
        parts[3] = Math.min(block, limits.exposures);
        parts[4] = limits.testedDays == Limits.NEVER ? 0 : lastTested;
        for (int v = 0; v < tested.length; v++) {
            parts[v + 5] = 2 * Math.min(weeksBefore[v], limits.weeks) + (thisWeek[v] ? 1 : 0);
        }
        return new Key(parts);
    }

    /** A state of the count. */
    static final class Key {
        private final int[] parts;

        private Key(int[] parts) {
            this.parts = parts;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && Arrays.equals(parts, key.parts);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(parts);
        }
    }
}
