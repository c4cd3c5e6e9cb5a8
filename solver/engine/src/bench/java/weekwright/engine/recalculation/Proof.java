package weekwright.engine.recalculation;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import weekwright.engine.recalculation.ProofWeek.Block;
import weekwright.engine.recalculation.ProofWeek.Made;
import weekwright.engine.recalculation.ProofWeek.Option;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Aim;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Scenario;

/**
 * Proves the best plan of a small week under the yardstick rules with CP-SAT: one day of all that can be made is chosen
 * for each date, and what rules say across days ties them together. No plan here breaks a must.
 */
final class Proof {
    private static final long MAIN = 10_000;
    private static final long KEY = 100 * MAIN;
    /** Dearer than all levels together: for the fewest sessions moved among the best plans by must, key and main. */
    private static final long LEVELS = 1_000;

    private static final int REACH_DAYS = 5;
    private static final int SHORT_POINTS = 12;
    private static final int OVER_POINTS = 24;

    /**
     * What was proven.
     *
     * @param key what is owed as key, in tenths, as main and want are
     * @param moved sessions of the plan before that are no longer where they were
     */
    record Proven(long key, long main, long want, int moved, Plan plan) {}

    private final ProofWeek week;
    private final CpModel model = new CpModel();
    private final Map<LocalDate, List<Choice>> choices = new LinkedHashMap<>();
    private final List<BoolVar> placed = new ArrayList<>();
    private final LinearExprBuilder key = LinearExpr.newBuilder();
    private final LinearExprBuilder main = LinearExpr.newBuilder();
    private final LinearExprBuilder want = LinearExpr.newBuilder();

    /** One way to make a day. */
    private record Choice(Made made, Literal chosen) {}

    private Proof(Scenario scenario) {
        week = new ProofWeek(scenario);
        chooseDays();
        tieDays();
        tieBlocks();
        countHighDays();
        countFreeDays();
        week.group.aims().forEach(this::countAim);
    }

    /** The best plan by levels, or nothing where it could not be proven in the time. */
    static Optional<Proven> best(Scenario scenario, double seconds) {
        Proof proof = new Proof(scenario);
        LinearExprBuilder cost = LinearExpr.newBuilder();
        cost.addTerm(proof.key.build(), KEY);
        cost.addTerm(proof.main.build(), MAIN);
        cost.add(proof.want.build());
        return proof.solve(cost.build(), null, seconds);
    }

    /**
     * Whether some plan owes nothing as key and nothing as main, whatever else it costs.
     *
     * @throws IllegalStateException where that was not settled in the time
     */
    static boolean canOweNothing(Scenario scenario, double seconds) {
        Proof proof = new Proof(scenario);
        proof.model.addEquality(proof.key.build(), 0);
        proof.model.addEquality(proof.main.build(), 0);
        return switch (solver(seconds).solve(proof.model)) {
            case OPTIMAL, FEASIBLE -> true;
            case INFEASIBLE -> false;
            default -> throw new IllegalStateException("not settled in " + seconds + " s");
        };
    }

    private static CpSolver solver(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(2).setMaxTimeInSeconds(seconds).setRandomSeed(1);
        return solver;
    }

    /** A plan as good as any by must, key and main that moves as few sessions as can be; what is pinned stays. */
    static Optional<Proven> fewestMoved(Scenario scenario, Plan before, double seconds) {
        Proof proof = new Proof(scenario);
        LinearExprBuilder cost = LinearExpr.newBuilder();
        cost.addTerm(proof.key.build(), LEVELS * 100);
        cost.addTerm(proof.main.build(), LEVELS);
        for (Placement placement : before.placements()) {
            Literal stays = proof.staying(placement);
            if (placement.held().start()) {
                proof.model.addBoolOr(new Literal[] {stays});
            }
            cost.addTerm(stays, -1);
        }
        return proof.solve(cost.build(), before, seconds);
    }

    private Literal staying(Placement placement) {
        return week.options.stream()
                .filter(option -> same(option.placement(), placement))
                .<Literal>map(option -> placed.get(option.index()))
                .findFirst()
                .orElse(model.falseLiteral());
    }

    private static boolean same(Placement one, Placement other) {
        return one.family().equals(other.family())
                && one.start().equals(other.start())
                && java.util.Objects.equals(one.facility(), other.facility())
                && one.dose() == other.dose();
    }

    private Optional<Proven> solve(LinearExpr cost, @Nullable Plan before, double seconds) {
        model.minimize(cost);
        CpSolver solver = solver(seconds);
        if (solver.solve(model) != CpSolverStatus.OPTIMAL) {
            return Optional.empty();
        }
        List<Placement> placements = week.options.stream()
                .filter(option -> solver.booleanValue(placed.get(option.index())))
                .map(Option::placement)
                .map(p -> new Placement(
                        null, p.group(), p.family(), p.start(), null, p.facility(), null, p.dose(), null, null))
                .toList();
        int moved = before == null
                ? 0
                : (int) before.placements().stream()
                        .filter(old -> placements.stream().noneMatch(now -> same(now, old)))
                        .count();
        return Optional.of(new Proven(
                solver.value(key.build()),
                solver.value(main.build()),
                solver.value(want.build()),
                moved,
                week.plan(placements)));
    }

    private void chooseDays() {
        List<LinearExprBuilder> sums = new ArrayList<>();
        for (Option option : week.options) {
            placed.add(model.newBoolVar("place " + option.index()));
            sums.add(LinearExpr.newBuilder());
            want.addTerm(placed.get(option.index()), option.cost());
        }
        LocalDate first = week.scenario.firstDay();
        for (int day = -REACH_DAYS; day < 7 + REACH_DAYS; day++) {
            LocalDate date = first.plusDays(day);
            if (!week.dates().contains(date)) {
                choices.put(date, List.of(new Choice(week.fixedDay(date), model.trueLiteral())));
                continue;
            }
            List<Choice> own = new ArrayList<>();
            for (Made made : week.days(date)) {
                BoolVar chosen = model.newBoolVar(date + " " + own.size());
                own.add(new Choice(made, chosen));
                made.options().forEach(option -> sums.get(option.index()).add(chosen));
                want.addTerm(chosen, made.cost());
            }
            model.addExactlyOne(own.stream().map(Choice::chosen).toArray(Literal[]::new));
            choices.put(date, own);
        }
        for (Option option : week.options) {
            model.addEquality(sums.get(option.index()).build(), placed.get(option.index()));
        }
    }

    private void tieDays() {
        for (Option one : week.options) {
            for (Option other : week.options) {
                if (one.thing().date().isBefore(other.thing().date())) {
                    Literal[] both = {placed.get(one.index()), placed.get(other.index())};
                    if (!week.fitsInOrder(one.thing(), other.thing())) {
                        never(both);
                    } else {
                        costs(both, week.pathwayGap(one.thing(), other.thing()));
                    }
                }
            }
        }
    }

    private void never(Literal... together) {
        model.addBoolOr(negated(together));
    }

    private void costs(Literal[] together, int tenths) {
        if (tenths > 0) {
            BoolVar broken = model.newBoolVar("broken");
            Literal[] clause = java.util.Arrays.copyOf(negated(together), together.length + 1);
            clause[together.length] = broken;
            model.addBoolOr(clause);
            want.addTerm(broken, tenths);
        }
    }

    private static Literal[] negated(Literal[] literals) {
        return java.util.Arrays.stream(literals).map(Literal::not).toArray(Literal[]::new);
    }

    /** From each high block to the next within five days. */
    private void tieBlocks() {
        Map<LocalDate, Map<Block, Literal>> blocks = new LinkedHashMap<>();
        Map<LocalDate, Literal> none = new LinkedHashMap<>();
        choices.forEach((date, own) -> {
            Map<Block, List<Literal>> by = new LinkedHashMap<>();
            List<Literal> without = new ArrayList<>();
            for (Choice choice : own) {
                Block block = choice.made().block();
                if (block == null) {
                    without.add(choice.chosen());
                } else {
                    by.computeIfAbsent(block, b -> new ArrayList<>()).add(choice.chosen());
                }
            }
            Map<Block, Literal> any = new LinkedHashMap<>();
            by.forEach((block, ways) -> any.put(block, anyOf(ways)));
            blocks.put(date, any);
            none.put(date, anyOf(without));
        });
        blocks.forEach((date, earlier) -> {
            List<Literal> between = new ArrayList<>();
            for (int days = 1; days <= REACH_DAYS && blocks.containsKey(date.plusDays(days)); days++) {
                LocalDate next = date.plusDays(days);
                earlier.forEach((one, isOne) ->
                        blocks.get(next).forEach((other, isOther) -> tie(one, isOne, other, isOther, next, between)));
                between.add(none.get(next));
            }
        });
    }

    private void tie(Block one, Literal isOne, Block other, Literal isOther, LocalDate next, List<Literal> between) {
        if (!one.ours() && !other.ours()) {
            return;
        }
        List<Literal> together = new ArrayList<>(between);
        together.add(isOne);
        together.add(isOther);
        Literal[] all = together.toArray(Literal[]::new);
        long gap = other.start() - one.end();
        if (gap < one.crossMinutes()) {
            never(all);
        } else if ((one.high() & other.high()) == 0) {
            int hours = week.fixtureInWeekOf(next) ? 24 : 48;
            costs(all, ProofWeek.hourPoints(hours * 60, gap));
        }
    }

    /** True exactly when one of some ways, of which one at most is taken, is. */
    private Literal anyOf(List<Literal> ways) {
        if (ways.size() == 1) {
            return ways.get(0);
        }
        BoolVar any = model.newBoolVar("any");
        model.addEquality(LinearExpr.sum(ways.toArray(Literal[]::new)), any);
        return any;
    }

    private LinearExpr days(LocalDate from, int number, java.util.function.Predicate<Made> which) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int day = 0; day < number; day++) {
            for (Choice choice : choices.get(from.plusDays(day))) {
                if (which.test(choice.made())) {
                    sum.add(choice.chosen());
                }
            }
        }
        return sum.build();
    }

    private void countHighDays() {
        LocalDate first = week.scenario.firstDay();
        for (int from = -3; from < 7; from++) {
            LocalDate start = first.plusDays(from);
            int fixed = 0;
            for (int day = 0; day < 4; day++) {
                Made without = week.fixedDay(start.plusDays(day));
                fixed += without.highRunning() ? 1 : 0;
            }
            if (fixed < 4) {
                model.addLessOrEqual(days(start, 4, Made::highRunning), 3);
            }
        }
        PerWeek asked = week.group.highDays();
        if (asked == null) {
            return;
        }
        LinearExpr high = days(first, 7, Made::high);
        LinearExpr ours = days(first, 7, made -> made.high() && !made.highWithout());
        int fixed = (int)
                week.dates().stream().filter(date -> week.fixedDay(date).high()).count();
        model.addLessOrEqual(ours, Math.max(0, asked.most() - fixed));
        key.addTerm(missing(asked.least(), high), 10);
        want.addTerm(missing(asked.target(), high), 10L * SHORT_POINTS);
        IntVar over = model.newIntVar(0, 7, "over");
        model.addGreaterOrEqual(
                LinearExpr.newBuilder().add(over).addTerm(ours, -1).build(), Math.min(0, fixed - asked.target()));
        want.addTerm(over, 10L * OVER_POINTS);
    }

    private IntVar missing(long asked, LinearExpr there) {
        IntVar missing = model.newIntVar(0, Math.max(0, asked), "missing");
        model.addGreaterOrEqual(LinearExpr.newBuilder().add(missing).add(there).build(), Math.max(0, asked));
        return missing;
    }

    private void countFreeDays() {
        boolean missingAnyhow =
                week.dates().stream().allMatch(date -> week.fixedDay(date).busy());
        if (!missingAnyhow) {
            model.addLessOrEqual(days(week.scenario.firstDay(), 7, Made::busy), 6);
        }
    }

    private void countAim(Aim aim) {
        LinearExprBuilder all = LinearExpr.newBuilder();
        LinearExprBuilder counted = LinearExpr.newBuilder();
        for (Option option : week.options) {
            if (option.aim() == aim) {
                BoolVar its = placed.get(option.index());
                all.add(its);
                boolean micro = option.placement().dose() == weekwright.model.scenario.Dose.MICRO;
                if (!micro || aim.microCounts()) {
                    counted.add(its);
                }
            }
        }
        PerWeek asked = aim.perWeek();
        long there = week.commitments(aim.family());
        model.addLessOrEqual(all.build(), Math.max(0, asked.most() - there));
        IntVar owed = missing(asked.least() - there, counted.build());
        long points = switch (aim.priority()) {
            case KEY -> 16;
            case MAIN -> 12;
            case SPARE -> 4;
        };
        switch (aim.priority()) {
            case KEY -> key.addTerm(owed, 10);
            case MAIN -> main.addTerm(owed, 10);
            case SPARE -> want.addTerm(owed, 10 * points);
        }
        // Below the least nothing more is missing of the target than lies between the two.
        IntVar wanted = model.newIntVar(0, asked.target() - asked.least(), "wanted");
        IntVar reached = model.newIntVar(asked.least(), 100, "reached");
        model.addMaxEquality(reached, new LinearExpr[] {
            LinearExpr.newBuilder().add(all.build()).add(there).build(), LinearExpr.constant(asked.least())
        });
        model.addGreaterOrEqual(LinearExpr.newBuilder().add(wanted).add(reached).build(), asked.target());
        want.addTerm(wanted, 10 * points);
    }

    static {
        Loader.loadNativeLibraries();
    }
}
