package weekwright.engine.search;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * Local search by Timefold on one weighted sum, while the plan that is kept is compared by levels. The walk comes in two
 * parts: if after the first quarter the walk's own best breaks more musts than the best plan seen, a must weighs double
 * from then on.
 */
public final class TimefoldSearcher implements Searcher {
    private static final int LATE_ACCEPTANCE = 400;
    private static final double FIRST_PART = 0.25;

    private final EnvironmentMode mode;

    /** The searcher as it is used. */
    public TimefoldSearcher() {
        this(EnvironmentMode.NO_ASSERT);
    }

    /** The searcher in another mode, such as one that asserts every score. */
    TimefoldSearcher(EnvironmentMode mode) {
        this.mode = mode;
    }

    @Override
    public Found search(Problem problem, @Nullable Stimulus[] start, long seed, long moves, Watch watch) {
        long first = moves == Long.MAX_VALUE ? moves : Math.max(1, (long) (moves * FIRST_PART));
        Walk early = new Walk(problem, start, watch.forShare(FIRST_PART));
        Week reached = walk(early, start, seed, first);
        if (moves == 1 || early.best.cost().clean()) {
            return new Found(early.best.at(), early.moves());
        }
        Walk late = new Walk(problem, early.best.at(), watch);
        if (musts(problem, reached) > early.best.cost().must) {
            late.doubleMusts();
        }
        long left = moves == Long.MAX_VALUE ? moves : moves - first;
        walk(late, early.best.at(), seed + 1, left);
        return new Found(late.best.at(), early.moves() + late.moves());
    }

    private static long musts(Problem problem, Week reached) {
        @Nullable Stimulus[] at = new @Nullable Stimulus[problem.sessions.size()];
        reached.getSeats().forEach(seat -> at[seat.session().index] = seat.getOption());
        Cost cost = Judge.of(problem, at).total();
        return cost.must;
    }

    private Week walk(Walk walk, @Nullable Stimulus[] start, long seed, long moves) {
        List<Seat> seats = walk.problem.sessions.stream()
                .map(session -> new Seat(session, start[session.index]))
                .toList();
        Week week = new Week(seats, walk);
        if (walk.options() == 0) {
            return week;
        }
        Solver<Week> solver = SolverFactory.<Week>create(config(seed, moves)).buildSolver();
        walk.onStop(solver::terminateEarly);
        return solver.solve(week);
    }

    private SolverConfig config(long seed, long moves) {
        TerminationConfig termination = new TerminationConfig().withBestScoreLimit("0");
        if (moves != Long.MAX_VALUE) {
            termination.setMoveCountLimit(moves);
        }
        return new SolverConfig()
                .withEnvironmentMode(mode)
                .withRandomSeed(seed)
                .withSolutionClass(Week.class)
                .withEntityClasses(Seat.class)
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(WeekScore.class))
                .withTerminationConfig(termination)
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(
                                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SlotMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
    }
}
