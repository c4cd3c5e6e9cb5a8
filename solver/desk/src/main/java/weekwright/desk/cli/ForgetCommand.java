package weekwright.desk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Named;
import weekwright.desk.store.Outcome;
import weekwright.model.scenario.Scenario;

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

    @Option(
            names = "--athlete",
            paramLabel = "ID",
            required = true,
            description = "The athlete's id or name in the scenario.")
    private String athlete = "";

    ForgetCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Outcome outcome = FolderChange.of(around, folder, store -> {
            Scenario known = store.head().contents().scenario();
            return store.forget(Named.athletes(known).idOf(athlete));
        });
        return outcome instanceof Outcome.Saved ? Exit.DONE : Exit.BAD_INPUT;
    }
}
