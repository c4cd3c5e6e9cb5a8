package weekwright.desk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Folders;
import weekwright.desk.app.Inputs;
import weekwright.desk.store.Outcome;
import weekwright.desk.store.Store;
import weekwright.desk.view.Plain;

/** Takes an athlete out of a folder for good. */
@Command(
        name = "forget",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Takes an athlete out of every revision of a folder: scenario, plan, log, findings, texts and labels.",
            "It cannot be undone."
        })
final class ForgetCommand implements Callable<Integer> {
    private final Surroundings around;

    @Parameters(paramLabel = "FOLDER", description = "The folder of the scenario and its plan.")
    private String folder = "";

    @Option(names = "--athlete", paramLabel = "ID", required = true, description = "The athlete's id in the scenario.")
    private String athlete = "";

    ForgetCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Store store = Folders.open(Inputs.path(folder), around.clock());
        Outcome outcome = store.forget(athlete);
        around.tell(store.news());
        around.err().println(Plain.text(outcome.message()));
        return outcome instanceof Outcome.Saved ? Exit.DONE : Exit.BAD_INPUT;
    }
}
