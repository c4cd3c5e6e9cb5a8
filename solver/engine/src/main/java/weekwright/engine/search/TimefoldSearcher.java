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
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Judge;

/**
 * Local search by Timefold on one weighted sum, while the plan that is kept is compared by levels. A walk begins warm, taking
 * steps that make the plan a little worse, and cools as its moves or seconds are used up; with much time it is warmed and
 * cooled again from the best plan, until a whole cooling finds nothing better. If after the first quarter the walk's own best
 * breaks more musts than the best plan seen, a must weighs double from then on.
 */
public final class TimefoldSearcher implements Searcher {
    /** Moves of one cooling at most, for each option of the sessions that may move. */
    private static final int COOLING = Searcher.PATIENCE / 2;
    /** What a step may make worse at the start of a cooling, in tenths of a point: some of one wish. Found by trying 6 to 50. */
    private static final String WARMTH = "15";

    /** A step that makes the sum worse by so much is never taken: at the warmest its odds are e to the minus 40. */
    private static final long REACH = 600;

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
        long longest = COOLING * Searcher.options(free);
        long first = Math.min(longest, moves == Long.MAX_VALUE ? moves : (long) (moves * FIRST_PART));
        Pace pace = pace(problem, start, watch.forShare(FIRST_PART), first);
        Week reached = walk(problem, start, free, seed, pace, 1);
        int mustFactor = musts(problem, start, reached) > pace.best.cost().must ? 2 : 1;
        long tried = pace.moves();
        for (int cooling = 1; !pace.settled(); cooling++) {
            @Nullable Stimulus[] at = pace.best.at();
            Cost before = pace.best.cost();
            pace = pace(problem, at, watch, Math.min(longest, moves == Long.MAX_VALUE ? moves : moves - tried));
            walk(problem, at, free, seed + cooling, pace, mustFactor);
            tried += pace.moves();
            if (pace.most() < longest || watch.tried(0)) {
                break;
            }
            if (pace.best.cost().compareLevels(before) == 0) {
                return new Found(at, tried, true);
            }
        }
        return new Found(pace.best.at(), tried, pace.settled());
    }

    private static Pace pace(Problem problem, @Nullable Stimulus[] at, Watch watch, long most) {
        return new Pace(Judge.of(problem, at), new Scale(problem), watch, most, Long.MAX_VALUE);
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
        Walk walk = new Walk(problem, start, pace, mustFactor, reach());
        Week week = new Week(seats, walk);
        if (seats.isEmpty() || pace.most() < 1 || pace.settled()) {
            return week;
        }
        Solver<Week> solver =
                SolverFactory.<Week>create(config(seed, cooling(pace))).buildSolver();
        walk.onStop(solver::terminateEarly);
        Week best = solver.solve(week);
        pace.end();
        return best;
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
                        .withAcceptorConfig(
                                new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(WARMTH))
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
