package weekwright.desk.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
        FolderChange.of(
                around,
                folder,
                store -> to == null
                        ? store.undo(store.head().number())
                        : store.restore(store.head().number(), to));
    }
}
