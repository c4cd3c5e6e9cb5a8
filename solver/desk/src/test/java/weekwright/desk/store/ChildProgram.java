package weekwright.desk.store;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import weekwright.model.document.Documents;
import weekwright.model.scenario.Scenario;

/** Another program that works in a folder, to be killed in the middle of its work. */
final class ChildProgram implements AutoCloseable {
    static final String HOLDING = "holding";

    private final Process process;
    private final BufferedReader said;

    private ChildProgram(Process process) {
        this.process = process;
        this.said = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** One that writes change after change, and says each once it is confirmed. */
    static ChildProgram writing(Path folder) throws IOException {
        return start("write", folder);
    }

    /** One that holds the folder's lock. */
    static ChildProgram holding(Path folder) throws IOException {
        ChildProgram child = start("hold", folder);
        if (!HOLDING.equals(child.line())) {
            throw new IOException("the child could not take the lock");
        }
        return child;
    }

    private static ChildProgram start(String what, Path folder) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        ProcessBuilder builder = new ProcessBuilder(
                java, "-Xshare:auto", "-XX:TieredStopAtLevel=1", ChildProgram.class.getName(), what, folder.toString());
        builder.environment().put("CLASSPATH", Objects.requireNonNull(classes).replace(";", File.pathSeparator));
        builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        return new ChildProgram(builder.start());
    }

    /** The next line it says, or null when it says no more. */
    String line() throws IOException {
        return said.readLine();
    }

    /** Kills it where it stands (SIGKILL); gives what it had still said. */
    List<String> kill() throws IOException, InterruptedException {
        // By its handle: the process itself would close what the child has said and nobody has read yet.
        process.toHandle().destroyForcibly();
        if (!process.waitFor(30, TimeUnit.SECONDS)) {
            throw new IOException("the child could not be killed");
        }
        List<String> rest = new ArrayList<>();
        for (String line = line(); line != null; line = line()) {
            rest.add(line);
        }
        return rest;
    }

    @Override
    public void close() throws IOException {
        process.destroyForcibly();
        said.close();
    }

    /** What the other program does. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[1]);
        if (arguments[0].equals("hold")) {
            try (Disk.Lock lock = new RealDisk().tryLock(folder)) {
                say(lock == null ? "too late" : HOLDING);
                Thread.sleep(60_000);
            }
        }
        new Writer(folder).run();
    }

    private static void say(String line) {
        System.out.println(line);
        System.out.flush();
    }

    /** Saves, goes back and forth, brings in, edits by hand, comes late, forgets; a change comes every six hours. */
    private static final class Writer {
        private static final int ROUND = 25;

        private final Hands clock;
        private final Store store;

        private Writer(Path folder) throws Exception {
            Store before = Store.open(folder, new RealDisk(), new Hands("2027-03-01T08:00:00Z"));
            clock = new Hands(before.head().revision().at());
            store = Store.open(folder, new RealDisk(), clock);
        }

        private void run() throws Exception {
            for (int i = store.head().number(); ; i++) {
                clock.move(Duration.ofHours(6));
                Version head = store.head();
                say("doing " + (i % ROUND == 0 ? "forget" : "change"));
                Outcome outcome = change(i, head);
                Revision revision = outcome.head().revision();
                say("done " + revision.number() + " " + new TreeMap<>(revision.files()));
            }
        }

        private Outcome change(int i, Version head) throws Exception {
            int number = head.number();
            Contents now = head.contents();
            return switch (i % ROUND) {
                case 0 -> store.forget("guest");
                case 1 -> store.commit(number, "Guest comes", new Contents(withGuest(i), now.plan(), now.log()));
                case 4, 9 -> store.undo(number);
                case 5 -> store.redo(number);
                case 7 ->
                    store.take(number, "Log", Harbour.file("log.json", Harbour.LOG.replace("40", "" + (40 + i % 50))));
                case 12 -> store.commit(number - 1, "Late", now.with(Harbour.plan(i)));
                case 15 -> store.restore(number, number - 3);
                default -> store.commit(number, "Change " + i, now.with(Harbour.plan(i)));
            };
        }

        private static Scenario withGuest(int i) throws Exception {
            return Documents.readScenario(
                    "scenario.json",
                    Harbour.bytes(Harbour.SCENARIO
                            .replace(
                                    "\"athletes\": [ ",
                                    "\"athletes\": [ { \"id\": \"guest\", \"name\": \"Tess Quillan\", \"groups\": [\"crew\"] }, ")
                            .replace("Harbour squad", "Harbour squad " + i)));
        }
    }
}
