package weekwright.desk.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import weekwright.desk.app.InputFault;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SeasonFile;

/**
 * Every file that is accepted, damaged by a seeded chance: what comes of it is a clean preview, whose taking is a sound scenario, or
 * a clean refusal. 500 in every build; {@code -Dweekwright.mutations=10000} for more.
 */
class MutationsTest {
    private static final int COUNT = Integer.getInteger("weekwright.mutations", 500);
    private static final long SEED = 20270301;

    private static final List<String> SCRAPS = List.of(
            "\r\n",
            "\n ",
            "BEGIN:VEVENT\r\n",
            "END:VEVENT\r\n",
            "BEGIN:VTIMEZONE\r\n",
            "RRULE:FREQ=DAILY;INTERVAL=0\r\n",
            "RRULE:FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30\r\n",
            "RRULE:FREQ=MONTHLY;BYSETPOS=-1;BYDAY=MO,TU;COUNT=-3\r\n",
            "EXDATE;TZID=Nowhere:99999999T999999Z\r\n",
            "RECURRENCE-ID:20270306T143000Z\r\n",
            "DURATION:-P999999W\r\n",
            "DTEND:00010101T000000\r\n",
            "TZID=\"",
            ";VALUE=DATE",
            "\"",
            "\"\"\"",
            ";",
            ",",
            "\t",
            "\0",
            "\uFEFF",
            "\u202E",
            "99999999999999999999",
            "29/02/2027",
            "=1+1",
            "25:61");

    private static Map<String, Wanted> files() {
        Map<String, Wanted> files = new TreeMap<>();
        List.of(
                        "plain.ics",
                        "floating.ics",
                        "duration.ics",
                        "exception-first.ics",
                        "moved-instance.ics",
                        "zone-slash.ics",
                        "zone-in-words.ics",
                        "folded.ics",
                        "results.ics",
                        "two-calendars.ics",
                        "other-lines.ics",
                        "season-british.csv",
                        "season-american.csv",
                        "season-wide.txt",
                        "odd.csv")
                .forEach(file -> files.put(file, Wanted.FIXTURES));
        files.put("exdate-utc.ics", Wanted.of(What.CLOSURES).facility("hall"));
        files.put("daily-endless.ics", Wanted.of(What.AWAY).group("squad"));
        files.put("private.ics", Wanted.of(What.AWAY).athlete("a01"));
        files.put("week.tsv", Wanted.of(What.WINDOWS));
        files.put("athletes.csv", Wanted.of(What.ATHLETES));
        files.put("marks-german.csv", Wanted.of(What.MARKS));
        files.put("minutes.csv", Wanted.of(What.MINUTES));
        files.put("season", Wanted.FIXTURES);
        return files;
    }

    private static byte[] bytes(String file) {
        return file.equals("season") ? SeasonFile.table(1) : Takes.file(file);
    }

    @Test
    void a_damaged_file_gives_a_clean_preview_or_a_clean_refusal() {
        List<Map.Entry<String, Wanted>> files = new ArrayList<>(files().entrySet());
        int previews = 0;
        for (int i = 0; i < COUNT; i++) {
            Random chance = new Random(SEED + i);
            Map.Entry<String, Wanted> file = files.get(i % files.size());
            byte[] damaged = damaged(bytes(file.getKey()), chance);
            previews += survives(damaged, file.getValue(), "seed " + (SEED + i) + ", " + file.getKey()) ? 1 : 0;
        }
        // Both happen: damage that is noticed, and damage that leaves something to read.
        assertThat(previews).isBetween(COUNT / 5, COUNT - COUNT / 20);
    }

    /** Whether there was a preview; anything but that or a refusal fails. */
    private static boolean survives(byte[] file, Wanted wanted, String which) {
        Scenario scenario = Takes.march();
        Answers answers = Answers.NONE.with(Answers.MINUTES, "105");
        try {
            Preview preview = Intake.preview(file, scenario, wanted, answers);
            Scenario taken = preview.take(true);
            assertThat(taken.groups()).as(which).hasSize(1);
            assertThat(preview.rows()).as(which).hasSizeLessThanOrEqualTo(Limits.ENTRIES);
            return true;
        } catch (InputFault refused) {
            assertThat(refused.problems()).as(which).isNotEmpty();
            // What was accepted row by row must not be refused as a whole.
            assertThat(refused.getMessage()).as(which).doesNotContain("no longer be sound");
            return false;
        } catch (RuntimeException | StackOverflowError fault) {
            throw new AssertionError(which + "\n" + new String(file, StandardCharsets.UTF_8), fault);
        }
    }

    private static byte[] damaged(byte[] file, Random chance) {
        byte[] damaged = file;
        for (int i = 0; i <= chance.nextInt(4); i++) {
            damaged = once(damaged, chance);
        }
        return damaged;
    }

    private static byte[] once(byte[] file, Random chance) {
        int at = chance.nextInt(file.length + 1);
        int to = Math.min(file.length, at + chance.nextInt(40));
        return switch (chance.nextInt(6)) {
            case 0 -> joined(file, at, new byte[] {(byte) chance.nextInt(256)}, Math.min(file.length, at + 1));
            case 1 -> joined(file, at, new byte[0], to);
            case 2 -> joined(file, at, java.util.Arrays.copyOfRange(file, at, to), at);
            case 3 -> joined(file, at, new byte[0], file.length);
            case 4 -> lines(file, chance);
            default ->
                joined(file, at, SCRAPS.get(chance.nextInt(SCRAPS.size())).getBytes(StandardCharsets.UTF_8), at);
        };
    }

    /** The head of a file, something, and its tail. */
    private static byte[] joined(byte[] file, int headEnd, byte[] between, int tailStart) {
        byte[] joined = new byte[headEnd + between.length + file.length - tailStart];
        System.arraycopy(file, 0, joined, 0, headEnd);
        System.arraycopy(between, 0, joined, headEnd, between.length);
        System.arraycopy(file, tailStart, joined, headEnd + between.length, file.length - tailStart);
        return joined;
    }

    /** A line moved elsewhere. */
    private static byte[] lines(byte[] file, Random chance) {
        List<String> lines =
                new ArrayList<>(List.of(new String(file, StandardCharsets.ISO_8859_1).split("(?<=\n)", -1)));
        String moved = lines.remove(chance.nextInt(lines.size()));
        lines.add(chance.nextInt(lines.size() + 1), moved);
        return String.join("", lines).getBytes(StandardCharsets.ISO_8859_1);
    }
}
