package weekwright.desk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
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

    @Mixin
    private final Given given = new Given();

    @Option(names = "--json", description = "Print the plan with its findings and the rules kept as JSON.")
    private boolean json;

    CheckCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Work work = Work.toRead(new Inputs(around.in()), given.scenario, given.plan);
        Shown shown = new Shown(around, work.scenario(), around.planner().judge(work.scenario(), work.planned()));
        shown.print(json ? shown.checkJson() : null);
        return shown.exit();
    }
}
