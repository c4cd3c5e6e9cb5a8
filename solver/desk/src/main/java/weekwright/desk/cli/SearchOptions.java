package weekwright.desk.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import weekwright.desk.app.InputFault;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** How long and how to search, the same for every command that does. */
final class SearchOptions {
    private static final double USUAL_SECONDS = 5;
    private static final double MOST_SECONDS = 86_400;
    private static final int MOST_THREADS = 64;

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
        side();
    }

    /** What to search for. */
    Proposal proposal(Surroundings around, Scenario scenario, @Nullable Plan from) {
        return new Proposal(scenario, from, budget(), seed, side(), now(around, scenario, from));
    }

    private Budget budget() {
        if (length == null) {
            return Budget.seconds(USUAL_SECONDS);
        }
        if (length.moves != null) {
            return Budget.moves(
                    checked(length.moves > 0, "--moves", length.moves, "a whole number from 1", length.moves));
        }
        double seconds = length.seconds == null ? USUAL_SECONDS : length.seconds;
        boolean right = seconds > 0 && seconds <= MOST_SECONDS;
        return Budget.seconds(checked(right, "--seconds", seconds, "more than 0 and at most 86400", seconds));
    }

    private int side() {
        int asked =
                threads == null ? Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()) : threads;
        return checked(asked >= 1 && asked <= MOST_THREADS, "--threads", asked, "1 to 64", asked);
    }

    private static <T> T checked(boolean right, String option, Object given, String wanted, T value) {
        if (!right) {
            throw new InputFault(option + " is " + given + ": give " + wanted);
        }
        return value;
    }

    /** Only a published plan asks what time it is. */
    private @Nullable Moment now(Surroundings around, Scenario scenario, @Nullable Plan from) {
        if (now != null || from == null || from.published() == null) {
            return now;
        }
        return Moment.at(around.clock().instant(), scenario.zone());
    }
}
