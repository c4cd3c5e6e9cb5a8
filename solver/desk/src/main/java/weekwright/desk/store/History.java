package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/**
 * The revisions in a folder, one folder each: {@code 000012}; {@code 000012.beside} where it was refused and kept;
 * {@code 000012.damaged} where it could not be read. What begins with a point is unfinished and is swept away.
 */
final class History {
    /** A byte more than the reader of documents accepts. */
    static final int MOST_BYTES = 16 * 1024 * 1024 + 1;

    private static final Pattern NAME = Pattern.compile("(\\d{6,9})(\\.beside|\\.damaged)?");
    private static final String BESIDE = ".beside";
    private static final String DAMAGED = ".damaged";
    private static final String WRITING = ".writing";
    private static final String GONE = ".gone-";

    private final Path folder;
    private final Disk disk;

    History(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
    }

    /** A name in the folder of revisions. */
    private record Place(int number, String suffix) {
        String name() {
            return String.format(Locale.ROOT, "%06d", number) + suffix;
        }
    }

    private List<Place> places() throws IOException {
        List<Place> places = new ArrayList<>();
        for (String name : disk.list(folder)) {
            Matcher matcher = NAME.matcher(name);
            if (matcher.matches()) {
                places.add(new Place(
                        Integer.parseInt(matcher.group(1)), matcher.group(2) == null ? "" : matcher.group(2)));
            }
        }
        places.sort(Comparator.comparingInt(Place::number));
        return places;
    }

    /** Whether there is any revision, sound or not. */
    boolean isEmpty() throws IOException {
        return places().isEmpty();
    }

    /** The numbers of all revisions that are or were in force, the oldest first. */
    List<Integer> numbers() throws IOException {
        return places().stream()
                .filter(place -> place.suffix().isEmpty())
                .map(Place::number)
                .toList();
    }

    /** The number after the highest that was ever given. */
    int next() throws IOException {
        return places().stream().mapToInt(Place::number).max().orElse(0) + 1;
    }

    /**
     * All revisions that can be listed, those kept beside too, the oldest first. Damaged ones are passed over: they are told,
     * and set aside, when somebody wants what they hold.
     */
    List<Revision> all() throws IOException {
        List<Revision> all = new ArrayList<>();
        for (Place place : places()) {
            if (!place.suffix().equals(DAMAGED)) {
                listed(place).ifPresent(all::add);
            }
        }
        return all;
    }

    private Optional<Revision> listed(Place place) throws IOException {
        try {
            return Optional.of(revision(place));
        } catch (DamagedException e) {
            return Optional.empty();
        }
    }

    /**
     * A revision's particulars.
     *
     * @throws DamagedException when they cannot be read, or there is no such revision
     */
    Revision revision(int number) throws IOException, DamagedException {
        for (Place place : places()) {
            if (place.number() == number && !place.suffix().equals(DAMAGED)) {
                return revision(place);
            }
        }
        throw new DamagedException("it is not there");
    }

    private Revision revision(Place place) throws IOException, DamagedException {
        Path file = folder.resolve(place.name()).resolve(RevisionFile.NAME);
        return RevisionFile.read(
                file,
                bytes(file, RevisionFile.NAME),
                place.number(),
                place.suffix().equals(BESIDE));
    }

    private byte[] bytes(Path file, String name) throws IOException, DamagedException {
        try {
            return disk.read(file, MOST_BYTES);
        } catch (NoSuchFileException e) {
            throw new DamagedException(name + " is missing");
        }
    }

    /**
     * A revision's documents as they were written.
     *
     * @throws DamagedException when they are not as they were written
     * @throws StoreFault when a newer version of the program wrote them
     */
    Texts texts(Revision revision) throws IOException, DamagedException {
        Path where = folder.resolve(place(revision).name());
        Map<Part, byte[]> texts = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            String digest = revision.files().get(part.file());
            if (digest != null) {
                byte[] text = bytes(where.resolve(part.file()), part.file());
                if (Documents.form(text).orElse(0) > Scenario.VERSION) {
                    throw StoreFault.newer(where.resolve(part.file()));
                }
                if (!Documents.digest(text).equals(digest)) {
                    throw new DamagedException(part.file() + " is not as it was written");
                }
                texts.put(part, text);
            }
        }
        return new Texts(texts);
    }

    /**
     * A revision with its documents.
     *
     * @throws DamagedException when they are not as they were written
     */
    Version version(int number) throws IOException, DamagedException {
        Revision revision = revision(number);
        try {
            return new Version(revision, texts(revision).read());
        } catch (DocumentException e) {
            throw new DamagedException(e.problems().get(0).toString());
        }
    }

    private static Place place(Revision revision) {
        return new Place(revision.number(), revision.beside() ? BESIDE : "");
    }

    /**
     * Puts a revision on the disk: whole, or not at all. It is confirmed when this returns.
     *
     * <p>All is written and synced under a name that nobody reads; then it gets its number in one step.
     */
    void append(Revision revision, Texts texts) throws IOException {
        Path writing = folder.resolve(WRITING);
        Path named = folder.resolve(place(revision).name());
        try {
            disk.deleteAll(writing);
            fill(writing, revision, texts);
            disk.rename(writing, named);
        } catch (IOException e) {
            tidyUp(writing);
            throw e;
        }
        try {
            disk.sync(folder);
        } catch (IOException e) {
            takeBack(named, writing);
            throw e;
        }
    }

    /** What is said not to be saved must not turn up later. */
    private void takeBack(Path named, Path writing) {
        try {
            disk.rename(named, writing);
            disk.deleteAll(writing);
        } catch (IOException e) {
            // The disk is gone altogether; whoever finds it again finds the change, whole.
            return;
        }
    }

    /** Writes a revision where no other is yet, all of it synced but its name. */
    void put(Revision revision, Texts texts) throws IOException {
        fill(folder.resolve(place(revision).name()), revision, texts);
    }

    private void fill(Path where, Revision revision, Texts texts) throws IOException {
        disk.makeFolder(where);
        for (Part part : Part.values()) {
            byte[] text = texts.get(part);
            if (text != null) {
                file(where.resolve(part.file()), text);
            }
        }
        file(where.resolve(RevisionFile.NAME), RevisionFile.write(revision));
        disk.sync(where);
    }

    private void file(Path file, byte[] text) throws IOException {
        disk.write(file, text);
        disk.sync(file);
    }

    /** What is left of a failure makes room on a full disk; where even that fails, the next opening does it. */
    private void tidyUp(Path path) {
        try {
            disk.deleteAll(path);
        } catch (IOException e) {
            return;
        }
    }

    /** Keeps a damaged revision under a name that is read no more; gives that name. */
    String setAside(int number) throws IOException {
        for (Place place : places()) {
            if (place.number() == number && !place.suffix().equals(DAMAGED)) {
                String aside = new Place(number, DAMAGED).name();
                disk.rename(folder.resolve(place.name()), folder.resolve(aside));
                disk.sync(folder);
                return aside;
            }
        }
        throw new NoSuchFileException(folder.toString());
    }

    /** Takes revisions away: first all of their names, so that no half of one is ever read. */
    void drop(List<Revision> revisions) throws IOException {
        if (revisions.isEmpty()) {
            return;
        }
        for (Revision revision : revisions) {
            String name = place(revision).name();
            disk.rename(folder.resolve(name), folder.resolve(GONE + name));
        }
        disk.sync(folder);
        sweep();
    }

    /** Deletes what a write that broke off has left. */
    void sweep() throws IOException {
        for (String name : disk.list(folder)) {
            if (name.equals(WRITING) || name.startsWith(GONE)) {
                disk.deleteAll(folder.resolve(name));
            }
        }
    }
}
