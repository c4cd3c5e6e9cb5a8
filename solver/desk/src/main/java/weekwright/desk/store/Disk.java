package weekwright.desk.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the store asks of files: the machine's own, or in tests one that fails or loses power at any step.
 *
 * <p>Nothing is on the disk for good before it was synced: the bytes of a file by {@link #sync} of the file; that a name
 * is there, is gone or is another one's now by {@link #sync} of the folder that holds it.
 */
public interface Disk {
    /** Whether there is a folder of this name. */
    boolean isFolder(Path path);

    /**
     * The names in a folder, sorted.
     *
     * @throws java.nio.file.NoSuchFileException when there is no such folder
     */
    List<String> list(Path folder) throws IOException;

    /**
     * The bytes of a file.
     *
     * @param most bytes read at most
     * @throws java.nio.file.NoSuchFileException when there is no such file
     */
    byte[] read(Path file, int most) throws IOException;

    /** Makes a folder that only its owner opens, where the system knows owners. */
    void makeFolder(Path folder) throws IOException;

    /** Writes a file anew. */
    void write(Path file, byte[] bytes) throws IOException;

    /** Brings a file's bytes, or a folder's list of names, on to the disk. */
    void sync(Path path) throws IOException;

    /** Gives a file or a folder another name in the same folder, in one step; a file of that name is replaced. */
    void rename(Path from, Path to) throws IOException;

    /** Deletes a file or an empty folder; does nothing where there is none. */
    void delete(Path path) throws IOException;

    /** Takes a folder's lock; null where somebody else holds it, in this program or in another. */
    @Nullable
    Lock tryLock(Path folder) throws IOException;

    /** A lock that is held until it is closed, or until the program ends in whatever way. */
    interface Lock extends Closeable {}

    /** Deletes a file, or a folder with all that is in it; does nothing where there is none. */
    default void deleteAll(Path path) throws IOException {
        if (isFolder(path)) {
            for (String name : list(path)) {
                deleteAll(path.resolve(name));
            }
        }
        delete(path);
    }
}
