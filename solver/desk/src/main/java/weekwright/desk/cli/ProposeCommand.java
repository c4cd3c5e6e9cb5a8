package weekwright.desk.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;
import weekwright.desk.view.PlanPages;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Comparisons;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.model.answer.Comparison;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;

/** Searches for a plan and shows it. */
@Command(
        name = "propose",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Searches for the best plan of a scenario, shows it and writes it. A folder stands for its scenario and for"
                    + " the plan to start from, and keeps the new one as a change.",
            "Interrupt it (Ctrl-C) to take the best plan so far; interrupt again to stop at once."
        })
final class ProposeCommand implements Callable<Integer> {
    private static final double USUAL_SECONDS = 5;
    private static final double MOST_SECONDS = 86_400;
    private static final int MOST_THREADS = 64;

    private final Surroundings around;

    @Parameters(paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "PLAN",
            description = "File to write the plan into; it is replaced whole or not at all.")
    private @Nullable String output;

    @Option(names = "--from", paramLabel = "PLAN", description = "Plan to start from and to stay close to.")
    private @Nullable String from;

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

    @Option(names = "--json", description = "Print the plan as JSON instead of showing it.")
    private boolean json;

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

    ProposeCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Budget budget = budget();
        int side = threads();
        Work work = Work.toChange(new Inputs(around.in()), scenario, from, output, around.clock());
        around.tell(work.news());
        Plan start = work.plan();
        Scenario read = work.scenario();
        Judged judged = search(new Proposal(read, start, budget, seed, side, now(start, read)));
        if (start != null) {
            tellChanges(read, around.planner().judge(read, start).plan(), judged.plan());
        }
        Shown shown = new Shown(around, read, judged);
        try {
            shown.save(
                    work.target(),
                    (start == null ? "Planned. " : "Planned again. ") + PlanPages.verdict(judged.plan()));
        } finally {
            shown.print(json ? shown.planJson() : null);
        }
        return shown.exit();
    }

    private void tellChanges(Scenario read, Plan before, Plan after) {
        Comparison comparison = Comparisons.of(read, before, after);
        around.tell(List.of(comparison.sessions().isEmpty() ? "The plan stays as it was." : comparison.text()));
    }

    private Judged search(Proposal proposal) {
        Interrupts interrupts = new Interrupts(
                () -> around.err()
                        .println("\nStopping: the best plan so far follows. Interrupt again to stop at once."),
                () -> Runtime.getRuntime().halt(Exit.INTERRUPTED));
        interrupts.listen();
        ProgressReport report = new ProgressReport(around.err(), around.live(), System::nanoTime, interrupts::asked);
        report.begin();
        try {
            return around.planner().propose(proposal, report);
        } finally {
            report.end();
        }
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

    private int threads() {
        int asked =
                threads == null ? Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()) : threads;
        return checked(asked >= 1 && asked <= MOST_THREADS, "--threads", asked, "1 to 64", asked);
    }

    private <T> T checked(boolean right, String option, Object given, String wanted, T value) {
        if (!right) {
            throw new InputFault(option + " is " + given + ": give " + wanted);
        }
        return value;
    }

    /** Only a published plan asks what time it is. */
    private @Nullable Moment now(@Nullable Plan start, Scenario read) {
        if (now != null || start == null || start.published() == null) {
            return now;
        }
        return Moment.at(around.clock().instant(), read.zone());
    }
}
