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

/** Local search by Timefold: each of the {@link Coolings} is a simulated annealing. */
public final class TimefoldSearcher implements Searcher {
    /** A step that makes the sum worse by so much is never taken: at the warmest its odds are e to the minus 40. */
    private static final long REACH = 600;

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
        Coolings.Cooling cooling =
                (at, itsSeed, pace, mustFactor) -> walk(problem, at, free, itsSeed, pace, mustFactor);
        return new Coolings(problem, free, cooling, moves, watch).from(start, seed);
    }

    private @Nullable Stimulus[] walk(
            Problem problem, @Nullable Stimulus[] start, List<Session> free, long seed, Pace pace, int mustFactor) {
        Walk walk = new Walk(problem, start, pace, mustFactor, reach());
        Solver<Week> solver =
                SolverFactory.<Week>create(config(seed, cooling(pace))).buildSolver();
        walk.onStop(solver::terminateEarly);
        @Nullable Stimulus[] end = start.clone();
        for (Seat seat : solver.solve(new Week(Seat.of(free, start), walk)).getSeats()) {
            end[seat.session().index] = seat.getOption();
        }
        pace.end();
        return end;
    }

    /** In its asserting modes every plan is weighed to the end. */
    private long reach() {
        return mode == EnvironmentMode.NO_ASSERT ? REACH : Long.MAX_VALUE;
    }

    private SolverConfig config(long seed, TerminationConfig cooling) {
        return new SolverConfig()
                .withEnvironmentMode(mode)
                .withRandomSeed(seed)
                .withSolutionClass(Week.class)
                .withEntityClasses(Seat.class)
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(WeekScore.class))
                .withTerminationConfig(new TerminationConfig().withBestScoreLimit("0"))
                .withPhases(new LocalSearchPhaseConfig()
                        .withTerminationConfig(cooling)
                        .withMoveSelectorConfig(
                                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SlotMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig()
                                .withSimulatedAnnealingStartingTemperature(String.valueOf(Coolings.WARMTH)))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
    }

    /** A cooling ends when the moves or the seconds are used up, whichever is sooner. */
    private static TerminationConfig cooling(Pace pace) {
        TerminationConfig cold = new TerminationConfig();
        if (pace.most() < Long.MAX_VALUE) {
            cold.setMoveCountLimit(pace.most());
        }
        double seconds = pace.secondsLeft();
        return seconds < Double.POSITIVE_INFINITY
                ? cold.withMillisecondsSpentLimit(Math.max(1, (long) (1000 * seconds)))
                : cold;
    }
}
