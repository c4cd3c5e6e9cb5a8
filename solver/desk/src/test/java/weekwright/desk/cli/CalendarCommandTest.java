package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalendarCommandTest {
    private static final String PLAN = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "facility": "gym" } ] }
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    private int calendar(String plan, String... more) {
        String[] arguments = new String[3 + more.length];
        arguments[0] = "calendar";
        arguments[1] = "demo:one-match";
        arguments[2] = "-";
        System.arraycopy(more, 0, arguments, 3, more.length);
        return trial.in(plan.getBytes(StandardCharsets.UTF_8)).run(arguments);
    }

    @Test
    void a_calendar_is_printed_where_no_file_is_named() {
        assertThat(calendar(PLAN)).isZero();

        assertThat(trial.out()).startsWith("BEGIN:VCALENDAR\r\n").contains("SUMMARY:Heavy lower");
        assertThat(trial.err()).isEmpty();
    }

    @Test
    void written_again_it_says_what_has_changed() throws IOException {
        Path file = folder.resolve("squad.ics");

        assertThat(calendar(PLAN, "-o", file.toString())).isZero();
        assertThat(trial.err()).isEqualTo("Written into " + file + ". 6 entries.\n");
        assertThat(calendar(PLAN.replace("T12:00", "T12:30"), "-o", file.toString()))
                .isZero();
        assertThat(trial.err()).isEqualTo("Written into " + file + ". 6 entries: 0 new, 1 changed, 0 cancelled.\n");
        assertThat(Files.readString(file)).contains("SEQUENCE:1\r\nDTSTART;TZID=Europe/Dublin:20270209T123000");
    }

    @Test
    void what_is_there_and_is_not_ours_is_left_alone() throws IOException {
        Path file = folder.resolve("mine.ics");
        Files.writeString(file, "not a calendar");

        assertThat(calendar(PLAN, "-o", file.toString())).isEqualTo(2);

        assertThat(trial.err())
                .isEqualTo(file + " is there already and cannot be read (there is no calendar in the file: it must hold"
                        + " BEGIN:VCALENDAR): delete it, or give the name of another file\n");
        assertThat(Files.readString(file)).isEqualTo("not a calendar");
    }

    @Test
    void an_athlete_who_is_not_known_is_said() {
        assertThat(calendar(PLAN, "--athlete", "nobody")).isEqualTo(2);

        assertThat(trial.err()).startsWith("no athlete is called \"nobody\": ");
        assertThat(trial.out()).isEmpty();
    }
}
