package weekwright.desk.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.Folders;
import weekwright.desk.app.Inputs;
import weekwright.desk.store.Outcome;
import weekwright.desk.store.Store;
import weekwright.desk.view.Plain;

/** Goes back in the history of a folder. */
@Command(
        name = "undo",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Goes back one change of a folder, or to any revision that history lists.",
            "Nothing is deleted: going back is a change too, and redo takes it back."
        })
final class UndoCommand implements Runnable {
    private final Surroundings around;

    @Parameters(paramLabel = "FOLDER", description = "The folder of the scenario and its plan.")
    private String folder = "";

    @Option(names = "--to", paramLabel = "N", description = "The revision to take up again.")
    private @Nullable Integer to;

    UndoCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public void run() {
        Store store = Folders.open(Inputs.path(folder), around.clock());
        int head = store.head().number();
        Outcome outcome = to == null ? store.undo(head) : store.restore(head, to);
        around.tell(store.news());
        around.err().println(Plain.text(outcome.message()));
    }
}
