package weekwright.desk.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

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
        FolderChange.of(around, folder, store -> store.redo(store.head().number()));
    }
}
