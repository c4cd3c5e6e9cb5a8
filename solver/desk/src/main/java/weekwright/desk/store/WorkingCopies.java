package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The three files that a coach sees, opens and may change in any editor. They follow the version in force; what somebody
 * has saved since they were read last is left alone, and found at the next reading.
 */
final class WorkingCopies {
    private static final Pattern ASIDE = Pattern.compile("(scenario|plan|log)\\.damaged-.*\\.json");
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Path folder;
    private final Disk disk;
    private final Map<Part, byte[]> seen = new EnumMap<>(Part.class);

    WorkingCopies(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
    }

    Path path(Part part) {
        return folder.resolve(part.file());
    }

    /** The bytes of those that are there. */
    Map<Part, byte[]> read() throws IOException {
        Map<Part, byte[]> texts = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            byte[] text = read(part);
            if (text != null) {
                texts.put(part, text);
            }
        }
        seen.clear();
        seen.putAll(texts);
        return texts;
    }

    private byte @Nullable [] read(Part part) throws IOException {
        try {
            return disk.read(path(part), History.MOST_BYTES);
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    /** Makes them what the version in force holds; each is the old file or the new one at any moment. */
    void refresh(Texts wanted) throws IOException {
        boolean changed = false;
        for (Part part : Part.values()) {
            byte[] text = wanted.get(part);
            byte[] there = read(part);
            boolean untouched = there == null || Arrays.equals(there, seen.get(part));
            if (untouched && !Arrays.equals(text, there)) {
                replace(part, text);
                changed = true;
            }
        }
        if (changed) {
            disk.sync(folder);
        }
    }

    private void replace(Part part, byte @Nullable [] text) throws IOException {
        if (text == null) {
            disk.delete(path(part));
            seen.remove(part);
            return;
        }
        Path writing = folder.resolve(part.temporary());
        disk.write(writing, text);
        disk.sync(writing);
        disk.rename(writing, path(part));
        seen.put(part, text);
    }

    /** Gives a file that cannot be used another name; gives that name. */
    String keepAside(Part part, Instant now) throws IOException {
        String stem = part.file().replace(".json", ".damaged-" + TIME.format(now));
        List<String> taken = disk.list(folder);
        String name = stem + ".json";
        for (int i = 2; taken.contains(name); i++) {
            name = stem + "-" + i + ".json";
        }
        disk.rename(path(part), folder.resolve(name));
        // Before another file gets the old name: else a crash could leave the new one only.
        disk.sync(folder);
        return name;
    }

    /** Deletes what a write that broke off has left. */
    void sweep() throws IOException {
        for (Part part : Part.values()) {
            disk.delete(folder.resolve(part.temporary()));
        }
    }

    /** Deletes all three, for good. */
    void remove() throws IOException {
        for (Part part : Part.values()) {
            disk.delete(path(part));
        }
        disk.sync(folder);
    }

    /** Deletes the files that were kept aside; how many they were. */
    int removeAside() throws IOException {
        List<String> aside = disk.list(folder).stream()
                .filter(name -> ASIDE.matcher(name).matches())
                .toList();
        for (String name : aside) {
            disk.delete(folder.resolve(name));
        }
        return aside.size();
    }
}
