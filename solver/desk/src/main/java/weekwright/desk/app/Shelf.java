package weekwright.desk.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.store.Contents;
import weekwright.desk.store.RealDisk;
import weekwright.desk.store.Store;
import weekwright.desk.store.StoreFault;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/**
 * The folders that a page may open and begin: one that was named, or those that lie side by side in a place. Nothing
 * outside can be reached, whatever a name says.
 */
public final class Shelf {
    private static final Pattern NEW_NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,47}");

    private final Path place;
    private final @Nullable String only;
    private final Clock clock;
    private final Planner planner;
    private final Map<String, Workplace> open = new ConcurrentHashMap<>();

    private Shelf(Path place, @Nullable String only, Clock clock, Planner planner) {
        this.place = place;
        this.only = only;
        this.clock = clock;
        this.planner = planner;
    }

    /**
     * A shelf with one folder, which may still be empty or missing.
     *
     * @throws FileFault when it can be neither opened nor made
     */
    public static Shelf of(Path folder, Clock clock, Planner planner) {
        Path whole = folder.toAbsolutePath().normalize();
        Path parent = whole.getParent();
        Path name = whole.getFileName();
        if (parent == null || name == null || (Files.exists(whole) && !Files.isDirectory(whole))) {
            throw new FileFault(folder + " is no folder: give the name of one");
        }
        if (!Files.isDirectory(parent)) {
            throw new FileFault("There is no folder " + parent + ": make it first");
        }
        return new Shelf(parent, name.toString(), clock, planner);
    }

    /** All folders that lie in a place and hold a week, and room for new ones. */
    public static Shelf in(Path place, Clock clock, Planner planner) {
        return new Shelf(place.toAbsolutePath().normalize(), null, clock, planner);
    }

    /** Where new weeks are kept, to be shown. */
    public String where() {
        return (only == null ? place : place.resolve(only)).toString();
    }

    /** Name of the only folder, or null where there may be many. */
    public @Nullable String only() {
        return only;
    }

    /** Who judges and proposes plans here. */
    public Planner planner() {
        return planner;
    }

    /** The clock of the place. */
    public Clock clock() {
        return clock;
    }

    /** Names of the folders that hold a week, in order. */
    public List<String> names() {
        if (only != null) {
            return holdsWeek(place.resolve(only)) ? List.of(only) : List.of();
        }
        try (Stream<Path> inside = Files.list(place)) {
            return inside.filter(Shelf::holdsWeek)
                    .map(Path::getFileName)
                    .map(Path::toString)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw AtomicFile.fault(place, e);
        }
    }

    /**
     * A week that lies here.
     *
     * @param folder name of its folder
     * @param scenario what stands in its scenario.json, or null where that cannot be read
     */
    public record Week(String folder, @Nullable Scenario scenario) {
        private long lastDay() {
            return scenario == null ? Long.MIN_VALUE : scenario.lastDay().toEpochDay();
        }
    }

    /** All weeks that lie here, the latest first. Nothing is opened for it, and so nothing is written. */
    public List<Week> weeks() {
        return names().stream()
                .map(name -> new Week(name, scenario(place.resolve(name).resolve(Folders.SCENARIO))))
                .sorted(Comparator.comparingLong(Week::lastDay).reversed())
                .toList();
    }

    private static @Nullable Scenario scenario(Path file) {
        try {
            return Documents.readScenario(file.toString(), Files.readAllBytes(file));
        } catch (IOException | DocumentException e) {
            return null;
        }
    }

    private static boolean holdsWeek(Path folder) {
        return Files.isDirectory(folder)
                && (Files.isRegularFile(folder.resolve(Folders.SCENARIO)) || Store.isStore(folder, new RealDisk()));
    }

    /**
     * Opens a folder; empty where the shelf has none of that name.
     *
     * @throws FileFault when it cannot be read or written
     * @throws InputFault when the files in it cannot be used
     */
    public Optional<Workplace> open(String name) {
        Workplace known = open.get(name);
        if (known != null) {
            return Optional.of(known);
        }
        return names().stream()
                .filter(name::equals)
                .findFirst()
                .map(there -> open.computeIfAbsent(
                        there, folder -> new Workplace(Folders.open(place.resolve(folder), clock), planner)));
    }

    /**
     * Reads and judges the week of the only folder in a thread of its own, so that it is there when it is asked for. What
     * is wrong with it is said then.
     */
    public void readAhead() {
        if (only == null) {
            return;
        }
        String folder = only;
        Thread reading = new Thread(
                () -> {
                    try {
                        open(folder).ifPresent(place -> place.now().judged());
                    } catch (InputFault | FileFault fault) {
                        // Whoever opens the folder meets the same fault, and is told of it.
                    }
                },
                "reading ahead");
        reading.setDaemon(true);
        reading.start();
    }

    /**
     * Begins a folder with a week.
     *
     * @param name its name; where there is one folder only, that one is meant
     * @param label what was done, in a few words
     * @return the name of the folder
     * @throws InputFault when the name or the documents cannot be used, or the folder holds a week already
     * @throws FileFault when it cannot be written
     */
    public String begin(@Nullable String name, String label, Contents first) {
        String folder = only != null ? only : newName(name);
        if (names().contains(folder)) {
            throw new InputFault("there is a week in " + folder + " already: open it, or give another name");
        }
        try {
            Store store = Store.begin(place.resolve(folder), new RealDisk(), clock, label, first);
            open.put(folder, new Workplace(store, planner));
            return folder;
        } catch (DocumentException e) {
            throw InputFault.of(e);
        } catch (StoreFault e) {
            throw FileFault.of(e);
        }
    }

    /** A name for a new folder: the one that is wished for or, where there is something of that name, with a number. */
    public String free(String wished) {
        String name = wished;
        for (int number = 2; Files.exists(place.resolve(name)); number++) {
            name = wished + "-" + number;
        }
        return name;
    }

    private static String newName(@Nullable String name) {
        String given = Objects.requireNonNullElse(name, "").strip();
        if (!NEW_NAME.matcher(given).matches()) {
            throw new InputFault("the name of the folder is \"" + given
                    + "\": give small letters, digits and hyphens, such as week-1");
        }
        return given;
    }
}
