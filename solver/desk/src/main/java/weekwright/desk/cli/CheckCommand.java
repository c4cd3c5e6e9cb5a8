package weekwright.desk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.model.scenario.Scenario;

/** Judges a plan as it stands. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Judges a plan as it stands, one made here or one written by hand, and says what it breaks.")
final class CheckCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants.")
    private String scenario = "";

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan, or - for standard input.")
    private String plan = "";

    @Option(names = "--json", description = "Print the plan with its findings and the rules kept as JSON.")
    private boolean json;

    CheckCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (scenario.equals(Inputs.STANDARD_INPUT) && plan.equals(Inputs.STANDARD_INPUT)) {
            throw new InputFault("only one of SCENARIO and PLAN can come from standard input");
        }
        Inputs inputs = new Inputs(around.in());
        Scenario read = inputs.scenario(scenario);
        Shown shown = new Shown(around, read, around.planner().judge(read, inputs.plan(plan, read)));
        shown.print(json ? shown.checkJson() : null);
        return shown.exit();
    }
}
