package weekwright.benchmarks.rivals;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.DayClass;
import weekwright.model.catalogue.Demands;

/**
 * What a cohort's day is, as far as the yardstick rules ask. Times are epoch minutes.
 *
 * @param placed whether anything placed lies on it
 * @param highRunning high, and counted among high days running
 * @param lastEnd end of the last thing with its travel
 */
record Day(
        CohortDay of,
        boolean busy,
        boolean placed,
        boolean high,
        boolean middle,
        boolean highRunning,
        int visits,
        int firstStart,
        boolean firstPlaced,
        int lastEnd,
        boolean lastPlaced,
        Block block) {
    private static final int ONE_VISIT = 30;

    /**
     * The work of a high day without a fixture; its end lies before its start where there is none.
     *
     * @param cross minutes that must pass after it
     * @param high qualities met at high intensity, as bits
     */
    record Block(int start, int end, int cross, int high, boolean placed) {
        static final Block NONE = new Block(0, -1, 0, 0, false);

        boolean any() {
            return end >= start;
        }
    }

    /** The day with those things on it, in any order. */
    static Day of(CohortDay of, List<Stimulus> all) {
        List<Stimulus> things = all.stream()
                .filter(thing -> thing.family != null)
                .sorted(Stimulus::inOrder)
                .toList();
        boolean busy = things.stream().anyMatch(thing -> !family(thing).recovery);
        DayClass is = busy ? classed(of, things) : DayClass.FREE;
        boolean high = is == DayClass.HIGH;
        List<Stimulus> hard = things.stream()
                .filter(thing -> thing.demandFor(of.cohort()) > Demands.LOW_TO)
                .toList();
        boolean upper = !hard.isEmpty() && hard.stream().allMatch(thing -> family(thing).upperOnly);
        boolean fixture = things.stream().anyMatch(thing -> thing.playedBy(of.cohort()));
        int first = things.stream().mapToInt(thing -> thing.occupiedStart).min().orElse(0);
        int last = things.stream().mapToInt(thing -> thing.occupiedEnd).max().orElse(0);
        return new Day(
                of,
                busy || of.longTravel(),
                things.stream().anyMatch(Stimulus::placed),
                high,
                is == DayClass.MIDDLE,
                high && !upper,
                visits(things),
                first,
                things.stream().anyMatch(thing -> thing.occupiedStart == first && thing.placed()),
                last,
                things.stream().anyMatch(thing -> thing.occupiedEnd == last && thing.placed()),
                high && !fixture ? block(hard.isEmpty() ? sessions(things) : hard) : Block.NONE);
    }

    private static List<Stimulus> sessions(List<Stimulus> things) {
        return things.stream().filter(thing -> !thing.isFixture()).toList();
    }

    private static FamilyInfo family(Stimulus thing) {
        return Objects.requireNonNull(thing.family);
    }

    private static DayClass classed(CohortDay of, List<Stimulus> things) {
        int largest = 0;
        int sum = 0;
        int load = 0;
        boolean sprinted = false;
        boolean lifted = false;
        int lastEnd = Integer.MIN_VALUE / 2;
        for (Stimulus thing : things) {
            FamilyInfo family = family(thing);
            largest = Math.max(largest, thing.demandFor(of.cohort()));
            sum += thing.demandFor(of.cohort());
            load += thing.loadFor(of.cohort());
            if (thing.kind == Stimulus.Kind.PLACEMENT || thing.kind == Stimulus.Kind.COMMITMENT) {
                boolean first = (family.sprint && !sprinted) || (family.lift && !lifted);
                boolean shares = thing.start - lastEnd <= Demands.SHARED_WARM_UP_GAP_MINUTES;
                load -= shares ? thing.rpeTenths * (thing.warmUp - Demands.sharedWarmUp(thing.warmUp, first)) : 0;
                sprinted |= family.sprint;
                lifted |= family.lift;
                lastEnd = thing.end;
            }
        }
        return Demands.classOf(largest, sum - largest, load);
    }

    private static int visits(List<Stimulus> things) {
        int visits = 0;
        int until = Integer.MIN_VALUE / 2;
        List<Stimulus> inOrder = things.stream()
                .sorted(Comparator.comparingInt(thing -> thing.occupiedStart))
                .toList();
        for (Stimulus thing : inOrder) {
            visits += thing.occupiedStart - until > ONE_VISIT ? 1 : 0;
            until = Math.max(until, thing.occupiedEnd);
        }
        return visits;
    }

    private static Block block(List<Stimulus> things) {
        return new Block(
                things.stream().mapToInt(thing -> thing.start).min().orElse(0),
                things.stream().mapToInt(thing -> thing.end).max().orElse(-1),
                things.stream()
                        .mapToInt(thing -> PairRules.hours(family(thing).crossMust, thing.dose))
                        .max()
                        .orElse(0),
                things.stream().mapToInt(thing -> family(thing).high).reduce(0, (a, b) -> a | b),
                things.stream().anyMatch(Stimulus::placed));
    }
}
