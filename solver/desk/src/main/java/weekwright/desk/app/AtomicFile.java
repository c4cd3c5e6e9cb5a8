package weekwright.desk.app;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import org.jspecify.annotations.Nullable;

/**
 * A file that is written whole or not at all: into a temporary file beside it, on to the disk, then under its name. A
 * reader sees the old file or the new one, never a part.
 */
public final class AtomicFile implements Target {
    private final Path path;

    private AtomicFile(Path path) {
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
            return new AtomicFile(path);
        } catch (IOException e) {
            throw fault(given, e);
        }
    }

    /**
     * Puts the bytes under the file's name.
     *
     * @throws FileFault when they cannot be written; a file of that name is then as it was before
     */
    @Override
    public void write(byte[] bytes) {
        Path beside = path.resolveSibling(
                "." + path.getFileName() + "." + ProcessHandle.current().pid() + ".tmp");
        try {
            try {
                fill(beside, bytes);
                keepPermissions(beside);
                moveOver(beside);
            } finally {
                Files.deleteIfExists(beside);
            }
            settle(path.getParent());
        } catch (IOException e) {
            throw fault(path, e);
        }
    }

    private static void fill(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** Who could not read the old file cannot read the new one. */
    private void keepPermissions(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view != null && Files.exists(path)) {
            view.setPermissions(Files.getPosixFilePermissions(path));
        }
    }

    private void moveOver(Path file) throws IOException {
        try {
            Files.move(file, path, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(file, path, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Writes the folder's list of names to the disk, where the system lets a folder be opened. */
    private static void settle(@Nullable Path folder) throws IOException {
        if (folder == null) {
            return;
        }
        FileChannel channel;
        try {
            channel = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            return;
        }
        try (channel) {
            channel.force(true);
        }
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
        if (cause instanceof java.nio.file.NoSuchFileException) {
            return "does not exist";
        }
        if (cause instanceof java.nio.file.AccessDeniedException) {
            return "may not be opened";
        }
        String reason = cause instanceof FileSystemException system ? system.getReason() : cause.getMessage();
        return "could not be read or written" + (reason == null ? "" : ": " + reason);
    }
}
