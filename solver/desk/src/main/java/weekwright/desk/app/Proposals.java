package weekwright.desk.app;

import java.time.Clock;
import org.jspecify.annotations.Nullable;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** What is asked of a search where a coach says no more than how long. */
public final class Proposals {
    /** Most searches side by side. */
    public static final int MOST_THREADS = 64;

    private static final long SEED = 1;

    private Proposals() {}

    /** A search of so many seconds, on all processors, with the usual seed. */
    static Proposal of(Scenario scenario, @Nullable Plan from, double seconds, Clock clock) {
        return new Proposal(scenario, from, Budget.seconds(seconds), SEED, threads(), now(scenario, from, clock));
    }

    /** Searches of so many moves, one after the other, on all processors, with the usual seed. */
    public static Proposal of(Scenario scenario, @Nullable Plan from, long moves) {
        return new Proposal(scenario, from, Budget.moves(moves), SEED, threads(), null);
    }

    /** One search a processor. */
    public static int threads() {
        return Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    }

    /** What time it is; only a plan that was given out asks. */
    public static @Nullable Moment now(Scenario scenario, @Nullable Plan from, Clock clock) {
        return from == null || from.published() == null ? null : Moment.at(clock.instant(), scenario.zone());
    }
}
