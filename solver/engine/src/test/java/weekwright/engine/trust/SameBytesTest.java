package weekwright.engine.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.document.Documents;
import weekwright.scenarios.Scenarios;

/** The same seed and moves give the same plan, byte for byte, in any process and on any number of threads. */
class SameBytesTest {
    @Test
    void two_fresh_processes_with_one_and_two_threads_write_the_same_bytes(@TempDir Path folder) throws Exception {
        Path one = folder.resolve("one.json");
        Path two = folder.resolve("two.json");
        propose(one, 1);
        propose(two, 2);
        assertThat(Files.readString(two)).isNotEmpty().isEqualTo(Files.readString(one));
    }

    private static void propose(Path file, int threads) throws IOException, InterruptedException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                Run.class.getName(),
                file.toString(),
                String.valueOf(threads));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
    }

    /** The other process. */
    static final class Run {
        private Run() {}

        public static void main(String[] arguments) throws IOException {
            int threads = Integer.parseInt(arguments[1]);
            Proposal proposal =
                    new Proposal(Scenarios.read("sprint-week"), null, Budget.moves(20_000), 3, threads, null);
            Files.writeString(
                    Path.of(arguments[0]),
                    Documents.write(Engine.propose(proposal, Progress.SILENT).plan()));
        }
    }
}
