package weekwright.desk.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import weekwright.desk.store.Disk;
import weekwright.desk.store.RealDisk;

/**
 * A file that is written whole or not at all: into a temporary file beside it, on to the disk, then under its name. A
 * reader sees the old file or the new one, never a part.
 */
public final class AtomicFile implements Target {
    private final Disk disk = new RealDisk();
    private final Path folder;
    private final Path path;

    private AtomicFile(Path folder, Path path) {
        this.folder = folder;
        this.path = path;
    }

    /**
     * A place to write to, looked at before any work is done for it.
     *
     * @throws FileFault when nothing can be written there
     */
    public static AtomicFile at(Path given) {
        try {
            // The file that a link points to is replaced, not the link.
            Path path = Files.exists(given) ? given.toRealPath() : given.toAbsolutePath();
            Path folder = path.getParent();
            if (folder == null || Files.isDirectory(path)) {
                throw new FileFault(given + " is a folder: give the name of a file");
            }
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                throw new FileFault(given + " is not an ordinary file, so it is not replaced: give the name of a file");
            }
            if (!Files.isDirectory(folder)) {
                throw new FileFault("there is no folder " + folder + " to write into: make it first");
            }
            if (!Files.isWritable(folder)) {
                throw new FileFault("the folder " + folder + " may not be written to");
            }
            return new AtomicFile(folder, path);
        } catch (IOException e) {
            throw fault(given, e);
        }
    }

    @Override
    public String write(byte[] bytes, String label) {
        Path beside = path.resolveSibling(
                "." + path.getFileName() + "." + ProcessHandle.current().pid() + ".tmp");
        try {
            try {
                disk.write(beside, bytes);
                disk.sync(beside);
                disk.rename(beside, path);
            } finally {
                disk.delete(beside);
            }
            disk.sync(folder);
        } catch (IOException e) {
            throw fault(path, e);
        }
        return "Written into " + path + ".";
    }

    /** The file's path. */
    @Override
    public String toString() {
        return path.toString();
    }

    static FileFault fault(Object file, IOException cause) {
        return new FileFault(file + " " + why(cause), cause);
    }

    private static String why(IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return "does not exist";
        }
        if (cause instanceof AccessDeniedException) {
            return "may not be opened";
        }
        String reason = cause instanceof FileSystemException system ? system.getReason() : cause.getMessage();
        return "could not be read or written" + (reason == null ? "" : ": " + reason);
    }
}
