package weekwright.desk.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import weekwright.desk.store.Contents;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.model.document.DocumentException;

/** A folder that begins with a week. */
public final class NewFolder {
    private final Path folder;
    private final Clock clock;

    private NewFolder(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * A folder to be, looked at before any work is done for it.
     *
     * @throws FileFault when there is something of that name already but an empty folder, or no folder to make it in
     */
    public static NewFolder at(Path given, Clock clock) {
        Path parent = given.toAbsolutePath().getParent();
        if (Files.exists(given) && !isEmptyFolder(given)) {
            throw new FileFault(given + " is there already: name a new or an empty folder");
        }
        if (parent == null || !Files.isDirectory(parent)) {
            throw new FileFault("there is no folder " + parent + " to make one in: make it first");
        }
        return new NewFolder(given, clock);
    }

    private static boolean isEmptyFolder(Path given) {
        if (!Files.isDirectory(given)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(given)) {
            return inside.findAny().isEmpty();
        } catch (IOException e) {
            throw AtomicFile.fault(given, e);
        }
    }

    /**
     * Begins it.
     *
     * @param label what was done, in a few words
     * @return where it is, as a sentence
     * @throws FileFault when it cannot be written
     */
    public String begin(String label, Contents first) {
        try {
            Store.begin(folder, new RealDisk(), clock, label, first);
            return "Written into " + folder + ".";
        } catch (DocumentException e) {
            throw InputFault.of(e);
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }
}
