package weekwright.desk.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Folders;
import weekwright.desk.app.Inputs;
import weekwright.desk.store.Outcome;
import weekwright.desk.store.Store;
import weekwright.desk.view.Plain;

/** Takes back the last undo of a folder. */
@Command(
        name = "redo",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = "Takes the last undo of a folder back.")
final class RedoCommand implements Runnable {
    private final Surroundings around;

    @Parameters(paramLabel = "FOLDER", description = "The folder of the scenario and its plan.")
    private String folder = "";

    RedoCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        Store store = Folders.open(Inputs.path(folder), around.clock());
        Outcome outcome = store.redo(store.head().number());
        around.tell(store.news());
        around.err().println(Plain.text(outcome.message()));
    }
}
