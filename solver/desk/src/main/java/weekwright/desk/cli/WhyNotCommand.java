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
import weekwright.desk.view.terminal.WhyNotText;
import weekwright.model.answer.WhyNot;
import weekwright.model.document.Documents;

/** Says of one session why it does not lie elsewhere. */
@Command(
        name = "whynot",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Says of one session, day by day, when else it could lie, what that would cost and why.",
            "Every start, place and dose is really tried, the rest of the plan staying; pins of the session are passed"
                    + " over."
        })
final class WhyNotCommand implements Callable<Integer> {
    private final Surroundings around;

    @Mixin
    private final Given given = new Given();

    @Option(
            names = "--session",
            required = true,
            paramLabel = "ID",
            description = "The session, by its id in the plan; one that is left out too.")
    private String session = "";

    @Option(names = "--day", paramLabel = "DATE", description = "Only this day of its week.")
    private @Nullable String day;

    @Option(names = "--json", description = "Print every option with what it would do as JSON.")
    private boolean json;

    WhyNotCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Work work = Work.toRead(new Inputs(around.in()), given.scenario, given.plan);
        WhyNot answer = Asking.whyNot(work.scenario(), work.planned(), session, day);
        Output out = new Output(around.out());
        if (json) {
            out.bytes(Documents.write(answer).getBytes(StandardCharsets.UTF_8));
        } else {
            out.text(WhyNotText.of(answer));
        }
        return Exit.of(answer.totals());
    }
}
