package weekwright.desk.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.desk.app.InputFault;
import weekwright.desk.app.Inputs;
import weekwright.desk.app.Shelf;
import weekwright.desk.page.Desk;
import weekwright.desk.view.terminal.Plain;

/** Opens the coach's desk as a page in a browser on this machine. */
@Command(
        name = "desk",
        mixinStandardHelpOptions = true,
        versionProvider = VersionText.class,
        description = {
            "Opens the coach's desk as a page: see the week, hold a session, pin it, plan again.",
            "It prints an address for a browser on this machine; nothing is sent anywhere else. Interrupt it (Ctrl-C) to"
                    + " close the desk."
        })
final class DeskCommand implements Callable<Integer> {
    private static final int USUAL_PORT = 0;
    private static final int HIGHEST_PORT = 65_535;

    private final Surroundings around;

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            description = "The folder of a week, there or to be made; without one the page lists those in this place.")
    private @Nullable String folder;

    @Option(names = "--port", paramLabel = "N", description = "Where it listens, 1 to 65535; usually any that is free.")
    private int port = USUAL_PORT;

    DeskCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new InputFault("--port is " + port + ": give 1 to 65535, or 0 for any that is free");
        }
        Shelf shelf = folder == null
                ? Shelf.in(Path.of(""), around.clock(), around.planner())
                : Shelf.of(Inputs.path(folder), around.clock(), around.planner());
        try {
            open(shelf);
        } catch (InterruptedException e) {
            // By now the desk is closed: what is still being written would be cut off.
            Thread.currentThread().interrupt();
        }
        return Exit.DONE;
    }

    /** Opens the desk and keeps it open until an interrupt. */
    private void open(Shelf shelf) throws InterruptedException {
        CountDownLatch end = new CountDownLatch(1);
        Interrupts interrupts =
                new Interrupts(end::countDown, () -> Runtime.getRuntime().halt(Exit.INTERRUPTED));
        shelf.readAhead();
        Desk desk = Desk.start(shelf, port, this::tell);
        try {
            interrupts.listen();
            end.await();
            around.err().println("Closing the desk.");
        } finally {
            desk.close();
        }
    }

    private void tell(String address) {
        new Output(around.out())
                .text("Open in a browser on this machine (it opens once): " + Plain.text(address) + "\n");
    }
}
