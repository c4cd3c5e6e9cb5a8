package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Asking;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;
import weekwright.desk.view.TradeOffsText;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.model.answer.TradeOffs;
import weekwright.model.document.Documents;

/** Says what cannot all be had, and what could go. */
@Command(
        name = "tradeoffs",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Says which wishes cannot all be had, where something that must hold or is owed is not met, and what could go"
                    + " instead, what buys most first. A plan brings its pins; without one a plan is searched for.",
            "Everything that could go is really searched for. Interrupt it (Ctrl-C) to take what is known so far."
        })
final class TradeOffsCommand implements Callable<Integer> {
    private static final int MOST_THREADS = 64;

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PLAN",
            description = "The plan, or - for standard input; a folder brings its own.")
    private @Nullable String plan;

    @Option(
            names = "--moves",
            paramLabel = "N",
            defaultValue = "20000",
            description = "How much to search for each thing that is tried; usually 20000.")
    private long moves;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of all chance; usually 1.")
    private long seed;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Searches side by side, 1 to 64; usually one a processor. It never changes what is found.")
    private @Nullable Integer threads;

    @Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    TradeOffsCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Budget budget = budget();
        int side = side();
        Work work = Work.toRead(new Inputs(around.in()), scenario, plan);
        TradeOffs answer = asked(new Proposal(work.scenario(), work.plan(), budget, seed, side, null));
        Output out = new Output(around.out());
        if (json) {
            out.bytes(Documents.write(answer).getBytes(StandardCharsets.UTF_8));
        } else {
            out.text(TradeOffsText.of(answer, around.ink()));
        }
        return answer.totals().must() > 0 ? Exit.MUST_BROKEN : Exit.DONE;
    }

    private TradeOffs asked(Proposal proposal) {
        Interrupts interrupts = new Interrupts(
                () -> around.err()
                        .println("\nStopping: what is known so far follows. Interrupt again to stop at once."),
                () -> Runtime.getRuntime().halt(Exit.INTERRUPTED));
        interrupts.listen();
        ProgressReport report = new ProgressReport(around.err(), around.live(), System::nanoTime, interrupts::asked);
        report.beginMany();
        try {
            return Asking.tradeOffs(proposal, report, report::trying);
        } finally {
            report.end();
        }
    }

    private Budget budget() {
        if (moves < 1) {
            throw new InputFault("--moves is " + moves + ": give a whole number from 1");
        }
        return Budget.moves(moves);
    }

    private int side() {
        int asked =
                threads == null ? Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()) : threads;
        if (asked < 1 || asked > MOST_THREADS) {
            throw new InputFault("--threads is " + asked + ": give 1 to 64");
        }
        return asked;
    }
}
