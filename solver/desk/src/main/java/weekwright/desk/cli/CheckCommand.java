package weekwright.desk.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Work;

/** Judges a plan as it stands. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Judges a plan as it stands, one made here or one written by hand, and says what it breaks.")
final class CheckCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "What the coach knows and wants, or a folder.")
    private String scenario = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PLAN",
            description = "The plan, or - for standard input; a folder brings its own.")
    private @Nullable String plan;

    @Option(names = "--json", description = "Print the plan with its findings and the rules kept as JSON.")
    private boolean json;

    CheckCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Work work = Work.toRead(new Inputs(around.in()), scenario, plan);
        Shown shown = new Shown(around, work.scenario(), around.planner().judge(work.scenario(), work.planned()));
        shown.print(json ? shown.checkJson() : null);
        return shown.exit();
    }
}
