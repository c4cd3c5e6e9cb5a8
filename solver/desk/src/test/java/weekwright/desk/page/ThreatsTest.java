package weekwright.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The twelve threats to the page are listed in DEVELOPERS.md, each with tests that there are. */
class ThreatsTest {
    private static final Path DESK = Path.of("").toAbsolutePath();
    private static final Pattern NAMED = Pattern.compile("`([A-Z]\\w*Test)[.](\\w+)`");

    @Test
    void each_has_its_tests() throws IOException {
        List<String> rows = rows();

        assertThat(rows).hasSize(12);
        for (String row : rows) {
            List<String> named = NAMED.matcher(row)
                    .results()
                    .map(found -> found.group(1) + "." + found.group(2))
                    .toList();
            assertThat(named).as(row).isNotEmpty().allSatisfy(ThreatsTest::exists);
        }
    }

    private static List<String> rows() throws IOException {
        String text = Files.readString(DESK.resolve("../../DEVELOPERS.md"));
        String part =
                text.substring(text.indexOf("## What the page is safe against"), text.indexOf("## Releasing"));
        return part.lines()
                .filter(line -> line.startsWith("| "))
                .filter(line -> !line.startsWith("| threat |") && !line.startsWith("| ---"))
                .toList();
    }

    private static void exists(String named) {
        String[] parts = named.split("[.]", -1);
        try (Stream<Path> files = Files.walk(DESK.resolve("src"))) {
            Path file = files.filter(path -> path.endsWith(parts[0] + ".java"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no test is called " + parts[0]));
            assertThat(Files.readString(file)).contains("    void " + parts[1] + "(");
        } catch (IOException e) {
            throw new AssertionError(named, e);
        }
    }
}
