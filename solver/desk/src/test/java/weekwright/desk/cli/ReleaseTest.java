package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;

/** What is given out says the same as the program. */
class ReleaseTest {
    private static final Path FILES = Path.of("src", "release");
    private static final Path TOP = Path.of("..", "..");

    @Test
    void one_version_stands_everywhere() throws IOException {
        for (Path pom : poms()) {
            assertThat(Files.readString(pom)).as(pom.toString()).contains("<version>" + Engine.VERSION + "</version>");
        }
        assertThat(Files.readString(FILES.resolve("CHANGES.md"))).contains("\n## " + Engine.VERSION + "\n");
    }

    private static List<Path> poms() throws IOException {
        try (Stream<Path> files = Files.walk(TOP, 3)) {
            return files.filter(file -> file.endsWith("pom.xml")).toList();
        }
    }

    @Test
    void the_zip_holds_what_its_first_page_names_and_nothing_else() throws IOException {
        List<String> packed = Pattern.compile("<source>[^<]*?([^</]+)</source>")
                .matcher(Files.readString(FILES.resolve("zip.xml")))
                .results()
                .map(found -> found.group(1))
                .toList();
        String start = Files.readString(FILES.resolve("START.txt"));
        List<String> named = start.substring(start.indexOf("WHAT LIES HERE"))
                .lines()
                .skip(1)
                .flatMap(line -> Stream.of(line.split(" {2,}", -1)[0].split(", ", -1)))
                .toList();

        assertThat(packed).contains("START.txt").hasSize(named.size() + 1).containsAll(named);
    }

    @Test
    void the_commands_of_its_first_page_are_known() throws IOException {
        List<String> commands = Files.readAllLines(FILES.resolve("START.txt")).stream()
                .filter(line -> line.startsWith("    weekwright "))
                .map(line -> line.strip().split("\\s+", -1)[1])
                .toList();

        assertThat(commands).contains("desk", "propose");
        Trial trial = new Trial();
        for (String command : commands) {
            String[] asked = command.equals("--help") ? new String[] {command} : new String[] {command, "--help"};
            assertThat(trial.run(asked)).as(command).isZero();
        }
    }
}
