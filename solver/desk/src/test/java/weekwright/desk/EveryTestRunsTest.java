package weekwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No test is passed over, whatever the machine: a test that does not run is worse than none. */
class EveryTestRunsTest {
    private static final Path TOP = Path.of("../..");
    private static final Pattern PASSED_OVER = Pattern.compile(
            "@Disabled|@Ignore|@(En|Dis)abled(On|If|For)|Assum(e|ption)s?\\b[^ ]*[.(]|\\bassume\\w*\\(");

    /** The one that asks a device which only Linux has: what it shows is shown there. */
    private static final List<String> ON_LINUX_ONLY = List.of("FailingDiskTest.java");

    @Test
    void nothing_passes_a_test_over() throws IOException {
        try (Stream<Path> files = Files.walk(TOP)) {
            List<Path> tests = files.filter(file -> file.toString().matches(".*/src/(?!main/).*[.]java"))
                    .filter(file -> !file.endsWith("EveryTestRunsTest.java"))
                    .toList();
            assertThat(tests).hasSizeGreaterThan(200);
            for (Path test : tests) {
                boolean found = PASSED_OVER.matcher(Files.readString(test)).find();
                assertThat(found)
                        .as(test.toString())
                        .isEqualTo(ON_LINUX_ONLY.contains(test.getFileName().toString()));
            }
        }
    }
}
