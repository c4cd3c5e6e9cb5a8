package weekwright.desk.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Proposals;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** How long and how to search, the same for every command that does. */
final class SearchOptions {
    private static final double USUAL_SECONDS = 5;
    private static final double MOST_SECONDS = 86_400;

    @ArgGroup(exclusive = true)
    private @Nullable Length length;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of all chance; usually 1.")
    private long seed;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description =
                    "Searches side by side, 1 to 64; usually one a processor. It never changes a plan of --moves.")
    private @Nullable Integer threads;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description =
                    "What time it is, e.g. 2027-03-01T12:00, when a published plan is changed; usually by the clock.")
    private @Nullable Moment now;

    /** How long to search. */
    private static final class Length {
        @Option(names = "--seconds", paramLabel = "N", description = "How long to search; usually 5.")
        private @Nullable Double seconds;

        @Option(
                names = "--moves",
                paramLabel = "N",
                description = "How much to search; the same moves and seed give the same plan on every machine.")
        private @Nullable Long moves;
    }

    /**
     * Looks at what was given before anything is read.
     *
     * @throws InputFault when it cannot be
     */
    void check() {
        budget();
        side(threads);
    }

    /** What to search for. */
    Proposal proposal(Surroundings around, Scenario scenario, @Nullable Plan from) {
        return new Proposal(
                scenario,
                from,
                budget(),
                seed,
                side(threads),
                now == null ? Proposals.now(scenario, from, around.clock()) : now);
    }

    private Budget budget() {
        if (length == null) {
            return Budget.seconds(USUAL_SECONDS);
        }
        if (length.moves != null) {
            return budget(length.moves);
        }
        double seconds = length.seconds == null ? USUAL_SECONDS : length.seconds;
        boolean right = seconds > 0 && seconds <= MOST_SECONDS;
        return Budget.seconds(checked(right, "--seconds", seconds, "more than 0 and at most 86400", seconds));
    }

    /**
     * So many moves.
     *
     * @throws InputFault when there are none
     */
    static Budget budget(long moves) {
        return Budget.moves(checked(moves > 0, "--moves", moves, "a whole number from 1", moves));
    }

    /**
     * Searches side by side: as many as asked for, or one a processor.
     *
     * @throws InputFault when they are too few or too many
     */
    static int side(@Nullable Integer threads) {
        int asked = threads == null ? Proposals.threads() : threads;
        return checked(asked >= 1 && asked <= Proposals.MOST_THREADS, "--threads", asked, "1 to 64", asked);
    }

    private static <T> T checked(boolean right, String option, Object given, String wanted, T value) {
        if (!right) {
            throw new InputFault(option + " is " + given + ": give " + wanted);
        }
        return value;
    }
}
