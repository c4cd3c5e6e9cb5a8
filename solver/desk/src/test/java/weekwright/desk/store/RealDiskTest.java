package weekwright.desk.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.model.document.DocumentException;

class RealDiskTest {
    @TempDir
    private Path folder;

    private final Clock clock = new Hands("2027-03-01T08:00:00Z");

    private Store open() throws DocumentException, IOException {
        if (!Files.exists(folder.resolve("scenario.json"))) {
            Files.writeString(folder.resolve("scenario.json"), Harbour.SCENARIO);
        }
        return Store.open(folder, new RealDisk(), clock);
    }

    @Test
    void the_folder_on_a_disk_is_as_described() throws Exception {
        Store store = open();
        store.commit(1, "Planned", Harbour.week(1));
        store.commit(1, "Late", Harbour.week(2));
        store.undo(2);

        try (Stream<Path> files = Files.walk(folder)) {
            assertThat(files.filter(Files::isRegularFile)
                            .map(file -> folder.relativize(file).toString())
                            .sorted())
                    .containsExactly(
                            ".weekwright-lock",
                            "history/000001/revision.json",
                            "history/000001/scenario.json",
                            "history/000002/plan.json",
                            "history/000002/revision.json",
                            "history/000002/scenario.json",
                            "history/000003.beside/plan.json",
                            "history/000003.beside/revision.json",
                            "history/000003.beside/scenario.json",
                            "history/000004/revision.json",
                            "history/000004/scenario.json",
                            "scenario.json");
        }
        assertThat(folder.resolve("history/000002/revision.json")).content().startsWith("""
                {
                  "weekwright": 1,
                  "revision": 2,
                  "at": "2027-03-01T08:00:00Z",
                  "label": "Planned",
                  "shows": 2,
                  "scenario.json": "sha256:""");
    }

    @Test
    void only_the_owner_opens_the_revisions_and_a_file_keeps_its_rights() throws Exception {
        Files.writeString(folder.resolve("scenario.json"), Harbour.SCENARIO);
        Files.setPosixFilePermissions(folder.resolve("scenario.json"), PosixFilePermissions.fromString("rw-------"));
        Store store = open();
        store.commit(1, "Renamed", new Contents(Harbour.scenario("Harbour crew"), null, null));

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("history"))))
                .isEqualTo("rwx------");
        assertThat(folder.resolve("scenario.json")).content().contains("Harbour crew");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("scenario.json"))))
                .isEqualTo("rw-------");
    }

    @Test
    void a_lock_is_held_once_in_a_program_and_given_back() throws Exception {
        RealDisk disk = new RealDisk();
        Disk.Lock lock = disk.tryLock(folder);

        assertThat(lock).isNotNull();
        assertThat(new RealDisk().tryLock(folder)).isNull();
        assertThat(disk.tryLock(folder.resolve("../" + folder.getFileName()))).isNull();
        lock.close();
        Disk.Lock again = new RealDisk().tryLock(folder);
        assertThat(again).isNotNull();
        again.close();
    }

    @Test
    void another_program_that_writes_is_waited_for_and_then_told_of() throws Exception {
        open();
        try (ChildProgram holder = ChildProgram.holding(folder)) {
            assertThat(new RealDisk().tryLock(folder)).isNull();
            Store patient = new Store(folder, new RealDisk(), clock, Retention.USUAL, 2);
            assertThatThrownBy(() -> Store.open(patient))
                    .hasMessageStartingWith("Another window or command is writing into " + folder);
            holder.kill();
        }
        assertThat(open().head().number()).isEqualTo(1);
    }

    @Test
    void many_windows_take_turns_and_each_change_is_kept() throws Exception {
        open();
        ExecutorService windows = Executors.newFixedThreadPool(4);
        try {
            List<Future<Outcome>> all = windows.invokeAll(IntStream.range(0, 12)
                    .mapToObj(hour -> (Callable<Outcome>) () -> open().commit(1, "Window " + hour, Harbour.week(hour)))
                    .toList());
            int saved = 0;
            for (Future<Outcome> one : all) {
                saved += one.get() instanceof Outcome.Saved ? 1 : 0;
            }
            assertThat(saved).isEqualTo(1);
            assertThat(open().history()).hasSize(13);
        } finally {
            windows.shutdownNow();
        }
    }

    @Test
    void a_folder_that_vanishes_is_said() throws Exception {
        Store store = open();
        new RealDisk().deleteAll(folder);

        assertThatThrownBy(store::head).hasMessageStartingWith("The folder " + folder + " is not as it was left");
        Files.createDirectory(folder);
    }

    @Test
    void names_of_folders_may_hold_anything() throws Exception {
        Path odd = Files.createDirectory(folder.resolve("Saison 2027 – Größe 100% 'ß' 🏃"));

        Store store = Store.begin(odd, new RealDisk(), clock, "Begun", Harbour.week(1));

        assertThat(store.undo(1)).isInstanceOf(Outcome.Same.class);
        assertThat(Store.open(odd, new RealDisk(), clock).head().contents()).isEqualTo(Harbour.week(1));
    }

    @Test
    void nothing_is_logged() throws Exception {
        StringBuilder logged = new StringBuilder();
        Handler listening = new Handler() {
            @Override
            public void publish(LogRecord entry) {
                logged.append(entry.getLoggerName())
                        .append(' ')
                        .append(entry.getMessage())
                        .append('\n');
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        Logger all = Logger.getLogger("");
        Level before = all.getLevel();
        all.addHandler(listening);
        all.setLevel(Level.ALL);
        try {
            Store store = open();
            store.commit(1, "For Isla Larkmoor", Harbour.week(1));
            Files.writeString(folder.resolve("plan.json"), "{ Isla Larkmoor");
            store.forget("a1");
        } finally {
            all.setLevel(before);
            all.removeHandler(listening);
        }
        assertThat(logged.toString().lines().filter(line -> line.contains("weekwright") || line.contains("Larkmoor")))
                .isEmpty();
    }
}
