package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tours of the README go as they stand there. */
class TourTest {
    private static final Path README = Path.of("../../README.md");

    @TempDir
    private Path place;

    @Test
    void the_tour_of_a_folder_does_what_it_says() throws Exception {
        Walk walk = walked("tour");

        walk.does("weekwright history week");
        assertThat(walk.trial.out().lines())
                .anyMatch(line -> line.contains("Back to revision 2: Planned."))
                .anyMatch(line -> line.contains("Undone: "))
                .anyMatch(line -> line.contains("Done again: "))
                .anyMatch(line -> line.contains("is held"));
    }

    @Test
    void the_tour_with_ones_own_week_does_what_it_says() throws Exception {
        Walk walk = walked("own week");

        assertThat(walk.trial.err()).contains("Fixtures: League round 19, Sat 13 Mar 14:30.");
        walk.does("weekwright brief mine --text");
        assertThat(walk.trial.out()).contains("Sun 7 Mar (MD)\n14:30 League round 18");
        walk.does("weekwright check mine");
        assertThat(walk.trial.out()).contains("pinned");
    }

    /** Does what stands between two marks of the README, line by line. */
    private Walk walked(String name) throws Exception {
        List<String> lines = tour(name);
        assertThat(lines).hasSizeGreaterThan(5);
        Walk walk = new Walk(place);
        for (String line : lines) {
            assertThat(walk.does(line)).as(line + "\n" + walk.trial.err()).isZero();
        }
        return walk;
    }

    /** The commands between two marks of the README. */
    static List<String> tour(String name) throws Exception {
        String text = Files.readString(README);
        String from = text.substring(text.indexOf("<!-- " + name + ":"), text.indexOf("<!-- end of " + name));
        return from.lines()
                .filter(line -> line.startsWith("weekwright") || line.startsWith("mkdir"))
                .toList();
    }
}
