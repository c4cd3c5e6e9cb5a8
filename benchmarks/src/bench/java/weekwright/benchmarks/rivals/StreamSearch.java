package weekwright.benchmarks.rivals;

import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import ai.timefold.solver.core.api.solver.SolutionManager;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.Stimulus;
import weekwright.model.plan.Totals;

/** Timefold as it comes, with constraint streams: its own first plan, its own local search, one thread. */
public final class StreamSearch {
    private final Problem problem;

    /** A search of a problem under the yardstick rules. */
    public StreamSearch(Problem problem) {
        this.problem = problem;
    }

    /** The best plan found within so many seconds: where each session lies. */
    public @Nullable Stimulus[] best(double seconds, long seed) {
        long start = System.nanoTime();
        StreamPlan plan = new StreamPlan(problem);
        long left = Math.max(10, Math.round(seconds * 1000) - (System.nanoTime() - start) / 1_000_000);
        SolverConfig config = config().withRandomSeed(seed)
                .withTerminationConfig(new TerminationConfig().withMillisecondsSpentLimit(left));
        return SolverFactory.<StreamPlan>create(config).buildSolver().solve(plan).at();
    }

    /** Takes up plans to be judged by the streams one after the other. */
    public Scorer scorer() {
        SolutionManager<StreamPlan, BendableLongScore> manager = SolutionManager.create(SolverFactory.create(config()));
        StreamPlan plan = new StreamPlan(problem);
        return at -> {
            plan.getSeats().forEach(seat -> seat.setOption(at[seat.getId()]));
            return totals(Objects.requireNonNull(manager.update(plan)));
        };
    }

    /** Says what a plan costs. */
    public interface Scorer {
        /** The totals of a plan, each session at an option or nowhere. */
        Totals totals(@Nullable Stimulus[] at);
    }

    private static Totals totals(BendableLongScore score) {
        return new Totals(
                tenths(score.hardScore(0)),
                tenths(score.softScore(0)),
                tenths(score.softScore(1)),
                tenths(score.softScore(2)));
    }

    private static double tenths(long score) {
        return score == 0 ? 0 : -score / 10.0;
    }

    private static SolverConfig config() {
        return new SolverConfig()
                .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                .withSolutionClass(StreamPlan.class)
                .withEntityClasses(StreamSeat.class)
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withConstraintProviderClass(StreamRules.class));
    }
}
