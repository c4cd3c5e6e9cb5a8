package weekwright.benchmarks.rivals;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.model.plan.Totals;

/** CP-SAT on whole weeks of one squad: the best plan within a time, and how much better any plan could be at most. */
public final class CpSearch {
    /** Weights that keep the levels apart: a session of main weighs more than all wants, one of key more than all main. */
    private static final long MAIN = 10_000;

    private static final long KEY = 100 * MAIN;

    private final Problem problem;

    /** A search of a problem under the yardstick rules. */
    public CpSearch(Problem problem) {
        this.problem = problem;
    }

    /**
     * What was found.
     *
     * @param at where each session lies; nothing where no plan was found in the time
     * @param claimed what the model says of the plan, or null where there is none
     * @param proven whether no plan is better
     * @param bound wants of any plan that is as good above them, at least; 0 where nothing is known
     */
    @SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
    public record Found(@Nullable Stimulus[] at, @Nullable Totals claimed, boolean proven, double bound) {}

    /** The best plan found within so many seconds, the making of the model included. */
    public Found best(double seconds, long seed, int workers) {
        long start = System.nanoTime();
        CpWeeks weeks = new CpWeeks(problem);
        Levels levels = Levels.minimized(weeks);
        double left = Math.max(0.01, seconds - (System.nanoTime() - start) / 1e9);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(workers).setMaxTimeInSeconds(left).setRandomSeed((int) seed);
        // Its full preparation of a model this size takes longer than the times that are compared.
        solver.getParameters()
                .setCpModelProbingLevel(0)
                .setMaxPresolveIterations(1)
                .setSymmetryLevel(0);
        CpSolverStatus status = solver.solve(weeks.cp.model);
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return new Found(at, null, false, 0);
        }
        place(weeks, solver, at);
        double above = solver.objectiveValue() - solver.value(levels.want());
        double bound = Math.max(0, Math.ceil(solver.bestObjectiveBound() - above - 1e-6)) / 10;
        return new Found(at, levels.totals(solver), status == CpSolverStatus.OPTIMAL, bound);
    }

    /**
     * What the model says of a plan that breaks no must.
     *
     * @param at where each session lies
     * @throws IllegalStateException when the model does not allow the plan
     */
    Totals claims(@Nullable Stimulus[] at) {
        CpWeeks weeks = new CpWeeks(problem);
        Map<AimWeek, Set<Integer>> taken = new HashMap<>();
        for (Session session : problem.sessions) {
            Stimulus there = at[session.index];
            if (there != null) {
                AimWeek aim = new AimWeek(Objects.requireNonNull(session.aim), session.week);
                taken.computeIfAbsent(aim, key -> new HashSet<>()).add(there.option);
            }
        }
        for (CpOption option : weeks.options) {
            boolean its = taken.getOrDefault(option.aim(), Set.of()).contains(option.at().option);
            weeks.cp.model.addEquality(option.placed(), its ? 1 : 0);
        }
        Levels levels = Levels.minimized(weeks);
        CpSolver solver = new CpSolver();
        CpSolverStatus status = solver.solve(weeks.cp.model);
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("the model does not allow the plan: " + status);
        }
        return levels.totals(solver);
    }

    /** What is owed by level, and together the goal. */
    private record Levels(LinearExpr key, LinearExpr main, LinearExpr want) {
        static Levels minimized(CpWeeks weeks) {
            Levels levels = new Levels(weeks.cp.key.build(), weeks.cp.main.build(), weeks.cp.want.build());
            LinearExprBuilder cost = LinearExpr.newBuilder();
            cost.addTerm(levels.key, KEY).addTerm(levels.main, MAIN).add(levels.want);
            weeks.cp.model.minimize(cost.build());
            return levels;
        }

        Totals totals(CpSolver solver) {
            return new Totals(0, solver.value(key) / 10.0, solver.value(main) / 10.0, solver.value(want) / 10.0);
        }
    }

    private void place(CpWeeks weeks, CpSolver solver, @Nullable Stimulus[] at) {
        Map<AimWeek, Integer> taken = new HashMap<>();
        for (CpOption option : weeks.options) {
            if (solver.booleanValue(option.placed())) {
                AimWeek aim = option.aim();
                List<Session> sessions = aim.aim().sessions.get(aim.week());
                Session session = sessions.get(taken.merge(aim, 1, Integer::sum) - 1);
                at[session.index] = session.options[option.at().option];
            }
        }
    }
}
