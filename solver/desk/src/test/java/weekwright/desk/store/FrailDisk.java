package weekwright.desk.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Files in memory that keep apart what a running program sees and what a power cut leaves. Every write, sync, rename and
 * delete is a step at which the power can go or the disk can fail.
 *
 * <p>After a cut, of what was not synced anything may be there (POSIX, IEEE Std 1003.1, fsync: only what was synced is
 * promised; from memory): of a file the old bytes, none, a part, or the new ones; of a folder's names any part of what was
 * made, deleted and renamed, in no order. A rename inside one folder is there whole or not at all (rename, same standard).
 */
final class FrailDisk implements Disk {
    /** What survives of what was not synced. */
    enum Luck {
        ALL,
        NONE,
        ANY
    }

    private static final class File {
        private byte[] now = new byte[0];
        private byte[] safe = new byte[0];
        private boolean synced = true;
    }

    private static final class Folder {
        private final Map<String, Object> now = new TreeMap<>();
        private final Map<String, Object> safe = new TreeMap<>();
        private final List<Map<String, Object>> pending = new ArrayList<>();

        /** A change of names that is there whole or not at all; {@code this} as a value stands for a name that is gone. */
        private void change(Map<String, Object> names) {
            apply(now, names);
            pending.add(names);
        }

        private void apply(Map<String, Object> to, Map<String, Object> names) {
            names.forEach((name, node) -> {
                if (node == this) {
                    to.remove(name);
                } else {
                    to.put(name, node);
                }
            });
        }
    }

    private final Folder root;
    private int steps;
    private int cutAt = Integer.MAX_VALUE;
    private int failFrom = Integer.MAX_VALUE;
    private int failTo = Integer.MAX_VALUE;
    private boolean onlyWritesFail;
    private boolean readOnly;
    private boolean locked;

    FrailDisk() {
        this(new Folder());
    }

    private FrailDisk(Folder root) {
        this.root = root;
    }

    /** Steps taken so far. */
    int steps() {
        return steps;
    }

    /** The power goes at this step, counted from now. */
    void cutAfter(int step) {
        cutAt = steps + step;
    }

    /** The disk is full from this step, counted from now, on. */
    void fullAfter(int step) {
        failFrom = steps + step;
        onlyWritesFail = true;
    }

    /** One step fails, counted from now. */
    void failOnce(int step) {
        failFrom = steps + step;
        failTo = failFrom + 1;
    }

    /** There is room again. */
    void mend() {
        failFrom = Integer.MAX_VALUE;
        failTo = Integer.MAX_VALUE;
        onlyWritesFail = false;
        readOnly = false;
    }

    void readOnly() {
        readOnly = true;
    }

    /** Somebody else holds the lock, or gives it back. */
    void lockedElsewhere(boolean elsewhere) {
        locked = elsewhere;
    }

    /** Writes as another program would, for good and unseen by steps. */
    void byHand(Path path, String text) throws IOException {
        Folder folder = folder(path.getParent());
        File file = new File();
        file.now = text.getBytes(StandardCharsets.UTF_8);
        file.safe = file.now;
        folder.now.put(name(path), file);
        folder.safe.put(name(path), file);
    }

    /** Makes a folder for good, unseen by steps. */
    FrailDisk with(Path path) throws IOException {
        Folder parent = folder(path.getParent());
        Folder made = new Folder();
        parent.now.put(name(path), made);
        parent.safe.put(name(path), made);
        return this;
    }

    /** The same disk once more, with all that is not synced. */
    FrailDisk copy() {
        return new FrailDisk((Folder) copy(root, new IdentityHashMap<>()));
    }

    private static Object copy(Object node, Map<Object, Object> copies) {
        Object known = copies.get(node);
        if (known != null) {
            return known;
        }
        if (node instanceof File file) {
            File copy = new File();
            copies.put(node, copy);
            copy.now = file.now;
            copy.safe = file.safe;
            copy.synced = file.synced;
            return copy;
        }
        Folder folder = (Folder) node;
        Folder copy = new Folder();
        copies.put(node, copy);
        folder.now.forEach((name, inner) -> copy.now.put(name, copy(inner, copies)));
        folder.safe.forEach((name, inner) -> copy.safe.put(name, copy(inner, copies)));
        for (Map<String, Object> change : folder.pending) {
            Map<String, Object> names = new LinkedHashMap<>();
            change.forEach((name, inner) -> names.put(name, copy(inner, copies)));
            copy.pending.add(names);
        }
        return copy;
    }

    /** The disk as it is found after a cut. */
    FrailDisk afterCut(Luck luck, Random random) {
        return new FrailDisk(survivor(root, luck, random));
    }

    private static Folder survivor(Folder folder, Luck luck, Random random) {
        Map<String, Object> names = new TreeMap<>(folder.safe);
        for (Map<String, Object> change : folder.pending) {
            if (survives(luck, random)) {
                folder.apply(names, change);
            }
        }
        Folder found = new Folder();
        names.forEach((name, node) -> {
            Object there =
                    node instanceof Folder inner ? survivor(inner, luck, random) : survivor((File) node, luck, random);
            found.now.put(name, there);
            found.safe.put(name, there);
        });
        return found;
    }

    private static File survivor(File file, Luck luck, Random random) {
        File found = new File();
        found.now = file.synced ? file.safe : bytes(file, luck, random);
        found.safe = found.now;
        return found;
    }

    private static byte[] bytes(File file, Luck luck, Random random) {
        if (luck != Luck.ANY) {
            return luck == Luck.ALL ? file.now : file.safe;
        }
        return switch (random.nextInt(4)) {
            case 0 -> file.safe;
            case 1 -> file.now;
            case 2 -> new byte[0];
            default -> Arrays.copyOf(file.now, random.nextInt(file.now.length + 1));
        };
    }

    private static boolean survives(Luck luck, Random random) {
        return luck == Luck.ALL || (luck == Luck.ANY && random.nextBoolean());
    }

    private void step(Path path, boolean takesRoom) throws IOException {
        int step = ++steps;
        if (step >= cutAt) {
            throw new PowerCut();
        }
        if (readOnly) {
            throw new AccessDeniedException(path.toString());
        }
        if (step >= failFrom && step < failTo && (takesRoom || !onlyWritesFail)) {
            throw new IOException(onlyWritesFail ? "No space left on device" : "Input/output error");
        }
    }

    private static String name(Path path) {
        return path.getFileName().toString();
    }

    private Object find(Path path) {
        Object node = root;
        for (Path name : path) {
            node = node instanceof Folder folder ? folder.now.get(name.toString()) : null;
        }
        return node;
    }

    private Folder folder(Path path) throws IOException {
        if (find(path) instanceof Folder folder) {
            return folder;
        }
        throw new NoSuchFileException(path.toString());
    }

    private File file(Path path) throws IOException {
        Object node = find(path);
        if (node instanceof File file) {
            return file;
        }
        throw node == null ? new NoSuchFileException(path.toString()) : new IOException("Is a directory");
    }

    @Override
    public boolean isFolder(Path path) {
        return find(path) instanceof Folder;
    }

    @Override
    public List<String> list(Path folder) throws IOException {
        return List.copyOf(folder(folder).now.keySet());
    }

    @Override
    public byte[] read(Path file, int most) throws IOException {
        byte[] bytes = file(file).now;
        return Arrays.copyOf(bytes, Math.min(most, bytes.length));
    }

    @Override
    public void makeFolder(Path path) throws IOException {
        step(path, true);
        if (find(path) != null) {
            throw new FileAlreadyExistsException(path.toString());
        }
        folder(path.getParent()).change(Map.of(name(path), new Folder()));
    }

    @Override
    public void write(Path path, byte[] bytes) throws IOException {
        Folder folder = folder(path.getParent());
        if (find(path) == null) {
            folder.change(Map.of(name(path), new File()));
        }
        File file = file(path);
        file.synced = false;
        // A cut or a full disk comes in the middle of the bytes.
        file.now = Arrays.copyOf(bytes, bytes.length / 2);
        step(path, true);
        file.now = bytes.clone();
    }

    @Override
    public void sync(Path path) throws IOException {
        step(path, false);
        if (find(path) instanceof Folder folder) {
            folder.safe.clear();
            folder.safe.putAll(folder.now);
            folder.pending.clear();
        } else {
            File file = file(path);
            file.safe = file.now;
            file.synced = true;
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step(from, false);
        Folder folder = folder(from.getParent());
        Object node = folder.now.get(name(from));
        if (node == null) {
            throw new NoSuchFileException(from.toString());
        }
        if (!from.getParent().equals(to.getParent()) || folder.now.get(name(to)) instanceof Folder) {
            throw new IOException("only inside a folder, and over no other folder");
        }
        Map<String, Object> names = new LinkedHashMap<>();
        names.put(name(from), folder);
        names.put(name(to), node);
        folder.change(names);
    }

    @Override
    public void delete(Path path) throws IOException {
        Object node = find(path);
        if (node == null) {
            return;
        }
        step(path, false);
        if (node instanceof Folder folder && !folder.now.isEmpty()) {
            throw new DirectoryNotEmptyException(path.toString());
        }
        Folder parent = folder(path.getParent());
        parent.change(Map.of(name(path), parent));
    }

    @Override
    public Lock tryLock(Path folder) throws IOException {
        folder(folder);
        if (readOnly) {
            throw new AccessDeniedException(folder.toString());
        }
        if (locked) {
            return null;
        }
        locked = true;
        return () -> locked = false;
    }

    /** All names below a folder, and the text of every file: for a look at what is really there. */
    Map<String, String> everything(Path path) {
        Map<String, String> all = new TreeMap<>();
        gather("", find(path), all);
        return all;
    }

    private static void gather(String path, Object node, Map<String, String> all) {
        if (node instanceof Folder folder) {
            folder.now.forEach((name, inner) -> gather(path + "/" + name, inner, all));
        } else if (node instanceof File file) {
            all.put(path, new String(file.now, StandardCharsets.UTF_8));
        }
    }
}
