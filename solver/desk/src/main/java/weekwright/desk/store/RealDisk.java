package weekwright.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The machine's files. */
public final class RealDisk implements Disk {
    private static final String LOCK = ".weekwright-lock";

    /**
     * The locks held in this program. The system's locks belong to a process, and closing any channel to a file gives all
     * of its locks up: within the program a second channel must not even be opened.
     */
    private static final Map<Path, RealDisk> HELD = new ConcurrentHashMap<>();

    @Override
    public boolean isFolder(Path path) {
        return Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                || (Files.isSymbolicLink(path) && Files.isDirectory(path));
    }

    @Override
    public List<String> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Override
    public byte[] read(Path file, int most) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(most);
        }
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        Files.createDirectory(folder, ownersOnly(folder));
    }

    private static FileAttribute<?>[] ownersOnly(Path folder) {
        boolean owners = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        return owners
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
                }
                : new FileAttribute<?>[0];
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
        }
    }

    @Override
    public void sync(Path path) throws IOException {
        boolean folder = isFolder(path);
        FileChannel channel;
        try {
            channel = FileChannel.open(path, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE);
        } catch (IOException e) {
            // Some systems do not let a folder be opened; they keep its names safe themselves.
            if (folder && Files.isDirectory(path)) {
                return;
            }
            throw e;
        }
        try (channel) {
            channel.force(true);
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        keepPermissions(from, to);
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Who could not read the old file cannot read the new one. */
    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (view != null && Files.isRegularFile(to)) {
            view.setPermissions(Files.getPosixFilePermissions(to));
        }
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.deleteIfExists(path);
    }

    @Override
    public @Nullable Lock tryLock(Path folder) throws IOException {
        Path key = folder.toRealPath().resolve(LOCK);
        if (HELD.putIfAbsent(key, this) != null) {
            return null;
        }
        FileChannel channel = null;
        FileLock lock = null;
        try {
            channel = FileChannel.open(key, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            lock = channel.tryLock();
            return lock == null ? null : release(key, channel);
        } finally {
            if (lock == null) {
                close(key, channel);
            }
        }
    }

    private static Lock release(Path key, FileChannel channel) {
        return () -> close(key, channel);
    }

    private static void close(Path key, @Nullable FileChannel channel) throws IOException {
        try {
            if (channel != null) {
                channel.close();
            }
        } finally {
            HELD.remove(key);
        }
    }
}
