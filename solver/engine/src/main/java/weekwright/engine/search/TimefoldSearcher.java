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
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Session;
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
    public Found search(
            Problem problem, @Nullable Stimulus[] start, List<Session> free, long seed, long moves, Watch watch) {
        Scale scale = new Scale(problem);
        long patience = PATIENCE * Searcher.options(free);
        long first = moves == Long.MAX_VALUE ? moves : (long) (moves * FIRST_PART);
        Pace early = new Pace(Judge.of(problem, start), scale, watch.forShare(FIRST_PART), first, patience);
        Week reached = walk(problem, start, free, seed, early, 1);
        if (early.settled()) {
            return new Found(early.best.at(), early.moves(), true);
        }
        long left = moves == Long.MAX_VALUE ? moves : moves - early.moves();
        Pace late = new Pace(Judge.of(problem, early.best.at()), scale, watch, left, patience);
        int mustFactor = musts(problem, start, reached) > early.best.cost().must ? 2 : 1;
        walk(problem, early.best.at(), free, seed + 1, late, mustFactor);
        return new Found(late.best.at(), early.moves() + late.moves(), late.settled());
    }

    private static long musts(Problem problem, @Nullable Stimulus[] start, Week reached) {
        @Nullable Stimulus[] at = start.clone();
        reached.getSeats().forEach(seat -> at[seat.session().index] = seat.getOption());
        return Judge.of(problem, at).total().must;
    }

    private Week walk(
            Problem problem, @Nullable Stimulus[] start, List<Session> free, long seed, Pace pace, int mustFactor) {
        List<Seat> seats = free.stream()
                .map(session -> new Seat(session, start[session.index]))
                .toList();
        Walk walk = new Walk(problem, start, pace, mustFactor);
        Week week = new Week(seats, walk);
        if (seats.isEmpty() || pace.most() < 1 || pace.settled()) {
            return week;
        }
        Solver<Week> solver = SolverFactory.<Week>create(config(seed)).buildSolver();
        walk.onStop(solver::terminateEarly);
        Week best = solver.solve(week);
        pace.end();
        return best;
    }

    private SolverConfig config(long seed) {
        return new SolverConfig()
                .withEnvironmentMode(mode)
                .withRandomSeed(seed)
                .withSolutionClass(Week.class)
                .withEntityClasses(Seat.class)
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(WeekScore.class))
                .withTerminationConfig(new TerminationConfig().withBestScoreLimit("0"))
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(
                                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SlotMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
    }
}
