package weekwright.desk.cli;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weekwright.desk.app.Asking;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;
import weekwright.desk.view.terminal.TradeOffsText;
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
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

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
        Budget budget = SearchOptions.budget(moves);
        int side = SearchOptions.side(threads);
        Work work = Work.toRead(new Inputs(around.in()), given.scenario, given.plan);
        TradeOffs answer = asked(new Proposal(work.scenario(), work.plan(), budget, seed, side, null));
        Output out = new Output(around.out());
        if (json) {
            out.bytes(Documents.write(answer).getBytes(StandardCharsets.UTF_8));
        } else {
            out.text(TradeOffsText.of(answer, around.ink()));
        }
        return Exit.of(answer.totals());
    }

    private TradeOffs asked(Proposal proposal) {
        return Searching.interruptible(
                around,
                "what is known so far",
                ProgressReport::beginMany,
                report -> Asking.tradeOffs(proposal, report, report::trying).answer());
    }
}
