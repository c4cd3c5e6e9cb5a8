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
import weekwright.desk.view.WhyNotText;
import weekwright.model.answer.WhyNot;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

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

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants.")
    private String scenario = "";

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan, or - for standard input.")
    private String plan = "";

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
        if (scenario.equals(Inputs.STANDARD_INPUT) && plan.equals(Inputs.STANDARD_INPUT)) {
            throw new InputFault("only one of SCENARIO and PLAN can come from standard input");
        }
        Inputs inputs = new Inputs(around.in());
        Scenario read = inputs.scenario(scenario);
        WhyNot answer = Asking.whyNot(read, inputs.plan(plan, read), session, day);
        Output out = new Output(around.out());
        if (json) {
            out.bytes(Documents.write(answer).getBytes(StandardCharsets.UTF_8));
        } else {
            out.text(WhyNotText.of(answer));
        }
        return Exit.of(answer.totals());
    }
}
