package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.scenarios.Scenarios;

/** The program in a process of its own: what no command in this process can show. */
class MainTest {
    @TempDir
    private Path folder;

    @Test
    void a_scenario_comes_through_a_pipe_and_the_libraries_keep_quiet() throws Exception {
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        Process process = start(out, err, "propose", "-", "--moves", "1");
        try (OutputStream in = process.getOutputStream()) {
            in.write(Scenarios.bytes("one-match"));
        }

        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();

        assertThat(process.exitValue()).isZero();
        assertThat(Files.readString(out, StandardCharsets.UTF_8))
                .startsWith("Kilmarrow first squad, one league match on Saturday\n")
                .contains("MD−4  high    ██");
        assertThat(Files.readAllLines(err, StandardCharsets.UTF_8))
                .allSatisfy(line -> assertThat(line).matches("Searching; .*|.* placed; .*|Nothing is kept: .*"));
    }

    private static Process start(Path out, Path err, String... arguments) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        ProcessBuilder builder =
                new ProcessBuilder(java, "-cp", System.getProperty("java.class.path"), Main.class.getName());
        builder.command().addAll(List.of(arguments));
        return builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    }
}
