package weekwright.benchmarks.rivals;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import weekwright.engine.problem.FamilyInfo;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.catalogue.Demands;

/** A day of those for whom it is the same, in the model: what may lie on it and what it is then. */
final class CpDay {
    private static final int ONE_VISIT = 30;
    private static final int VISITS = 2;
    /** Sides of the edges of a day's demand, times 100 as they are compared. */
    private static final long HIGH_BODY = 100L * Demands.HIGH_FROM;

    private static final long MIDDLE_BODY = 100L * Demands.LOW_TO + 1;
    private static final long HIGH_LOAD = (long) Demands.HIGH_FROM * Demands.LOAD_OF_A_POINT / 100;
    private static final long MIDDLE_LOAD = (long) Demands.LOW_TO * Demands.LOAD_OF_A_POINT / 100 + 1;

    final CohortDay of;
    final Literal busy;
    final Literal high;
    final Literal middle;
    final Literal highRunning;
    final Literal block;
    /** Start, end and hours of the block in minutes of the plan; where there is none they say nothing. */
    final IntVar blockStart;

    final IntVar blockEnd;
    final IntVar blockCross;
    private final CpModelling cp;
    private final Problem problem;
    private final int zero;
    private final List<CpOption> own;
    private final List<Stimulus> fixed;
    private final Literal hard;
    private final Map<Integer, Literal> qualities = new TreeMap<>();
    /** Whether there was a sprint, or a lift, before a start. */
    private final NavigableMap<Integer, Literal> sprinted = new TreeMap<>();

    private final NavigableMap<Integer, Literal> lifted = new TreeMap<>();

    CpDay(CpModelling cp, Problem problem, CohortDay of, List<CpOption> own, int zero) {
        this.cp = cp;
        this.problem = problem;
        this.of = of;
        this.own = own;
        this.zero = zero;
        fixed = of.fixed().stream().filter(thing -> thing.family != null).toList();
        hard = anyOf(thing -> demand(thing) > Demands.LOW_TO);
        busy = of.fixedDay().busy() ? cp.constant(true) : any(option -> !option.family().recovery);
        if (own.isEmpty()) {
            high = cp.constant(of.fixedDay().high());
            middle = cp.constant(of.fixedDay().middle());
        } else {
            LinearExpr body = body();
            LinearExpr load = load();
            high = cp.anyOf(List.of(cp.atLeast(body, HIGH_BODY), cp.atLeast(load, HIGH_LOAD)));
            Literal more = cp.anyOf(List.of(cp.atLeast(body, MIDDLE_BODY), cp.atLeast(load, MIDDLE_LOAD)));
            middle = cp.both(more, high.not());
            keepApart();
            fewVisits();
        }
        highRunning = highRunning();
        boolean played = fixed.stream().anyMatch(thing -> thing.playedBy(of.cohort()));
        block = played ? cp.constant(false) : high;
        int midnight = problem.calendar.minute(problem.calendar.date(of.day()).atStartOfDay()) - zero;
        blockStart = cp.number(midnight, midnight + 2 * 24 * 60);
        blockEnd = cp.number(midnight, midnight + 2 * 24 * 60);
        blockCross = cp.number(0, mostCross());
        boundBlock();
    }

    private int demand(Stimulus thing) {
        return thing.demandFor(of.cohort());
    }

    private static FamilyInfo family(Stimulus thing) {
        return Objects.requireNonNull(thing.family);
    }

    private List<Literal> those(Predicate<CpOption> which) {
        return own.stream().filter(which).<Literal>map(CpOption::placed).toList();
    }

    private Literal any(Predicate<CpOption> which) {
        return cp.anyOf(those(which));
    }

    private Literal anyOf(Predicate<Stimulus> which) {
        return fixed.stream().anyMatch(which) ? cp.constant(true) : any(option -> which.test(option.at()));
    }

    /** Demand of the whole day, times 100: the largest in full, the others at their share. */
    private LinearExpr body() {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        NavigableMap<Integer, List<Literal>> levels = new TreeMap<>();
        for (CpOption option : own) {
            levels.computeIfAbsent(demand(option.at()), level -> new ArrayList<>())
                    .add(option.placed());
            sum.addTerm(option.placed(), (long) Demands.OTHERS_PERCENT * demand(option.at()));
        }
        for (Stimulus thing : fixed) {
            levels.computeIfAbsent(demand(thing), level -> new ArrayList<>()).add(cp.constant(true));
            sum.add((long) Demands.OTHERS_PERCENT * demand(thing));
        }
        Literal reached = cp.constant(false);
        for (Map.Entry<Integer, List<Literal>> level : levels.descendingMap().entrySet()) {
            Integer below = levels.lowerKey(level.getKey());
            level.getValue().add(reached);
            reached = cp.anyOf(level.getValue());
            sum.addTerm(reached, (100L - Demands.OTHERS_PERCENT) * (level.getKey() - (below == null ? 0 : below)));
        }
        return sum.build();
    }

    /** Those who share a warm-up alike: they start at once, and of one kind. */
    private record Sharing(int start, int warmUp, int rpe, boolean sprint, boolean lift) {
        static final Comparator<Sharing> IN_TIME = Comparator.comparingInt(Sharing::start)
                .thenComparingInt(Sharing::warmUp)
                .thenComparingInt(Sharing::rpe)
                .thenComparing(Sharing::sprint)
                .thenComparing(Sharing::lift);

        static Sharing of(Stimulus thing) {
            return new Sharing(thing.start, thing.warmUp, thing.rpeTenths, family(thing).sprint, family(thing).lift);
        }

        int saved(boolean first) {
            return rpe * (warmUp - Demands.sharedWarmUp(warmUp, first));
        }
    }

    /** Load of the day in tenths, what shared warm-ups save taken off. */
    private LinearExpr load() {
        LinearExprBuilder load = LinearExpr.newBuilder();
        Map<Sharing, List<Literal>> sharing = new TreeMap<>(Sharing.IN_TIME);
        for (CpOption option : own) {
            load.addTerm(option.placed(), option.at().load);
            sharing.computeIfAbsent(Sharing.of(option.at()), key -> new ArrayList<>())
                    .add(option.placed());
        }
        for (Stimulus thing : fixed) {
            load.add(thing.loadFor(of.cohort()));
            if (thing.kind == Stimulus.Kind.COMMITMENT) {
                sharing.computeIfAbsent(Sharing.of(thing), key -> new ArrayList<>())
                        .add(cp.constant(true));
            }
        }
        Map<Integer, Literal> followed = new TreeMap<>();
        sharing.forEach((those, ways) -> {
            if (those.saved(false) > 0) {
                Literal after = followed.computeIfAbsent(those.start(), this::somethingJustBefore);
                saved(those, cp.both(CpModelling.sum(ways), after), load);
            }
        });
        return load.build();
    }

    private void saved(Sharing those, Literal shares, LinearExprBuilder load) {
        load.addTerm(shares, -those.saved(true));
        int more = those.saved(false) - those.saved(true);
        if (more > 0) {
            boolean special = those.sprint() || those.lift();
            Literal again = special ? cp.both(shares, notFirst(those)) : shares;
            load.addTerm(again, -more);
        }
    }

    private Literal notFirst(Sharing those) {
        if (those.sprint() && those.lift()) {
            return cp.both(sprinted(those.start()), lifted(those.start()));
        }
        return those.sprint() ? sprinted(those.start()) : lifted(those.start());
    }

    private Literal sprinted(int before) {
        return before(before, sprinted, thing -> shares(thing) && family(thing).sprint);
    }

    private Literal lifted(int before) {
        return before(before, lifted, thing -> shares(thing) && family(thing).lift);
    }

    /** Whether something of a kind starts before; asked for earlier starts first. */
    private Literal before(int start, NavigableMap<Integer, Literal> known, Predicate<Stimulus> kind) {
        Literal had = known.get(start);
        if (had == null) {
            Map.Entry<Integer, Literal> last = known.lowerEntry(start);
            int from = last == null ? Integer.MIN_VALUE : last.getKey();
            Literal since = anyOf(thing -> kind.test(thing) && thing.start >= from && thing.start < start);
            had = last == null ? since : cp.anyOf(List.of(last.getValue(), since));
            known.put(start, had);
        }
        return had;
    }

    private static boolean shares(Stimulus thing) {
        return thing.kind == Stimulus.Kind.PLACEMENT || thing.kind == Stimulus.Kind.COMMITMENT;
    }

    private Literal somethingJustBefore(int start) {
        return anyOf(thing -> shares(thing)
                && thing.start < start
                && thing.end <= start
                && start - thing.end <= Demands.SHARED_WARM_UP_GAP_MINUTES);
    }

    /** Nobody is in two things at once, or on the way. */
    private void keepApart() {
        Map<Integer, Map<Integer, List<Literal>>> beginning = byFacilityAnd(thing -> thing.start);
        Map<Integer, Map<Integer, List<Literal>>> ending = byFacilityAnd(thing -> thing.end);
        for (int start : starts()) {
            List<Literal> running = those(option -> option.at().start <= start && option.at().end > start);
            cp.model.addAtMostOne(running.toArray(Literal[]::new));
        }
        beginning.forEach((to, starts) ->
                ending.forEach((from, ends) -> starts.forEach((start, begins) -> ends.forEach((end, finishes) -> {
                    if (end <= start && end + problem.transferMinutes(from, to) > start) {
                        List<Literal> one = new ArrayList<>(begins);
                        one.addAll(finishes);
                        cp.model.addAtMostOne(one.toArray(Literal[]::new));
                    }
                }))));
    }

    private Map<Integer, Map<Integer, List<Literal>>> byFacilityAnd(ToIntFunction<Stimulus> time) {
        Map<Integer, Map<Integer, List<Literal>>> all = new TreeMap<>();
        for (CpOption option : own) {
            all.computeIfAbsent(option.at().facility, facility -> new TreeMap<>())
                    .computeIfAbsent(time.applyAsInt(option.at()), minute -> new ArrayList<>())
                    .add(option.placed());
        }
        return all;
    }

    private SortedSet<Integer> starts() {
        TreeSet<Integer> starts = new TreeSet<>();
        own.forEach(option -> starts.add(option.at().start));
        return starts;
    }

    private void fewVisits() {
        if (of.fixedDay().visits() > VISITS) {
            return;
        }
        LinearExprBuilder visits = LinearExpr.newBuilder();
        SortedSet<Integer> starts = starts();
        fixed.forEach(thing -> starts.add(thing.occupiedStart));
        for (int start : starts) {
            boolean goesOn = fixed.stream()
                    .anyMatch(thing -> thing.occupiedStart < start && start - thing.occupiedEnd <= ONE_VISIT);
            boolean certain = fixed.stream().anyMatch(thing -> thing.occupiedStart == start);
            if (!goesOn) {
                LinearExprBuilder begins = LinearExpr.newBuilder().add(certain ? 1 : 0);
                those(option -> option.at().start == start).forEach(begins::add);
                those(option -> option.at().start < start && start - option.at().end <= ONE_VISIT)
                        .forEach(before -> begins.addTerm(before, -1));
                Literal begun = cp.bool();
                cp.model.addGreaterOrEqual(begun, begins.build());
                visits.add(begun);
            }
        }
        cp.model.addLessOrEqual(visits.build(), VISITS);
    }

    private Literal highRunning() {
        List<Literal> upper = those(option -> demand(option.at()) > Demands.LOW_TO && option.family().upperOnly);
        if (own.isEmpty() || upper.isEmpty()) {
            return own.isEmpty() ? cp.constant(of.fixedDay().highRunning()) : high;
        }
        Literal other = anyOf(thing -> demand(thing) > Demands.LOW_TO && !family(thing).upperOnly);
        return cp.both(high, cp.anyOf(List.of(other, hard.not())));
    }

    private int mostCross() {
        int most = 0;
        for (CpOption option : own) {
            most = Math.max(most, cross(option.at()));
        }
        for (Stimulus thing : fixed) {
            most = Math.max(most, cross(thing));
        }
        return most;
    }

    private static int cross(Stimulus thing) {
        return PairRules.hours(family(thing).crossMust, thing.dose);
    }

    /** The block reaches at least round each of its sessions: all that are hard, or all where none is. */
    private void boundBlock() {
        Map<Integer, List<Literal>> starts = new TreeMap<>();
        Map<Integer, List<Literal>> ends = new TreeMap<>();
        Map<Integer, List<Literal>> crosses = new TreeMap<>();
        for (boolean isHard : List.of(true, false)) {
            starts.clear();
            ends.clear();
            crosses.clear();
            for (CpOption option : own) {
                if (isHard == demand(option.at()) > Demands.LOW_TO) {
                    starts.computeIfAbsent(option.at().start, k -> new ArrayList<>())
                            .add(option.placed());
                    ends.computeIfAbsent(option.at().end, k -> new ArrayList<>())
                            .add(option.placed());
                    crosses.computeIfAbsent(cross(option.at()), k -> new ArrayList<>())
                            .add(option.placed());
                }
            }
            for (Stimulus thing : fixed) {
                if (!thing.isFixture() && isHard == demand(thing) > Demands.LOW_TO) {
                    starts.computeIfAbsent(thing.start, k -> new ArrayList<>()).add(cp.constant(true));
                    ends.computeIfAbsent(thing.end, k -> new ArrayList<>()).add(cp.constant(true));
                    crosses.computeIfAbsent(cross(thing), k -> new ArrayList<>())
                            .add(cp.constant(true));
                }
            }
            starts.forEach((start, some) ->
                    cp.model.addLessOrEqual(blockStart, start - zero).onlyEnforceIf(when(some, isHard)));
            ends.forEach((end, some) ->
                    cp.model.addGreaterOrEqual(blockEnd, end - zero).onlyEnforceIf(when(some, isHard)));
            crosses.forEach((cross, some) ->
                    cp.model.addGreaterOrEqual(blockCross, cross).onlyEnforceIf(when(some, isHard)));
        }
    }

    private Literal[] when(List<Literal> some, boolean isHard) {
        Literal any = cp.anyOf(some);
        return isHard ? new Literal[] {any} : new Literal[] {any, hard.not(), high};
    }

    /** A literal that may be true only when the block holds a quality at high intensity. */
    Literal quality(int bit) {
        return qualities.computeIfAbsent(bit, this::newQuality);
    }

    private Literal newQuality(int bit) {
        Predicate<Stimulus> holds = thing -> !thing.isFixture() && (family(thing).high >> bit & 1) != 0;
        Literal hardWith = anyOf(thing -> holds.test(thing) && demand(thing) > Demands.LOW_TO);
        Literal softWith = anyOf(thing -> holds.test(thing) && demand(thing) <= Demands.LOW_TO);
        return cp.anyOf(List.of(hardWith, cp.both(softWith, hard.not())));
    }

    /** Whether a block can lie on the day at all. */
    boolean canBeBlock() {
        return of.fixedDay().block().any() || !own.isEmpty();
    }
}
