package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Load planned and load reported, asked on the command line. */
class LoadCommandTest {
    /**
     * Four weeks of one player's daily loads (SoccerMon data set, Scientific Data 2024, doi 10.1038/s41597-024-03386-x; CC BY
     * 4.0, from memory), from Monday 2020-08-10.
     */
    private static final int[] MONTH = {
        280, 300, 0, 240, 240, 240, 100, 180, 240, 450, 140, 360, 40, 0, 350, 240, 490, 40, 0, 120, 630, 720, 180, 500,
        210, 580, 720, 240
    };

    /** Squats on Tuesday, 7 × 60 = 420 AU, tempo runs on Wednesday, 4 × 40 = 160. */
    private static final String PLAN = """
            { "weekwright": 1, "scenario": "club", "placements": [
              { "group": "squad", "family": "heavy-lower-knee", "start": "2020-09-08T10:00" },
              { "group": "squad", "family": "tempo-run", "start": "2020-09-09T10:00" } ] }
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    /** A day without a load has no entry: leaving it out must change nothing. */
    private static String history(boolean nothingWritten) {
        List<String> entries = new ArrayList<>();
        for (int i = 0; i < MONTH.length; i++) {
            if (MONTH[i] > 0 || nothingWritten) {
                entries.add(
                        """
                        { "group": "squad", "family": "technique", "start": "%sT10:00", "minutes": %d, "rpe": 10, "done": %s }\
                        """.formatted(java.time.LocalDate.of(2020, 8, 10).plusDays(i), MONTH[i] / 10, MONTH[i] > 0));
            }
        }
        return String.join(",\n", entries);
    }

    private String scenario(String history) throws IOException {
        Path file = folder.resolve("scenario.json");
        Files.writeString(file, """
                { "weekwright": 1, "id": "club", "title": "A club", "zone": "Europe/Oslo", "firstDay": "2020-09-07", "days": 7,
                  "groups": [ { "id": "squad", "label": "Squad", "aims": [
                    { "family": "heavy-lower-knee", "perWeek": { "least": 0, "target": 1, "most": 1 }, "priority": "main" } ] } ],
                  "athletes": [ { "id": "a1", "name": "R. Ash", "groups": ["squad"] } ],
                  "history": [ %s ] }
                """.formatted(history));
        return file.toString();
    }

    private JsonNode json(String... arguments) {
        assertThat(trial.run(Stream.concat(Stream.of("load"), Stream.concat(Stream.of(arguments), Stream.of("--json")))
                        .toArray(String[]::new)))
                .as(trial.err())
                .isZero();
        return JsonMapper.shared().readTree(trial.out());
    }

    private String plan() throws IOException {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, PLAN);
        return file.toString();
    }

    /** Figures computed by hand from the data set, with n − 1 and with n. */
    @Test
    void four_real_weeks() throws IOException {
        double[][] sample = {{1400, 1.836, 2570.4}, {1410, 1.236, 1743.1}, {1870, 1.133, 2118.8}, {3150, 1.891, 5956.4}
        };
        double[][] population = {
            {1400, 1.983, 2776.3}, {1410, 1.335, 1882.8}, {1870, 1.224, 2288.5}, {3150, 2.042, 6433.7}
        };
        String file = scenario(history(false));

        weeks(json(file), sample, "n − 1");
        weeks(json(file, "--divisor", "population"), population, "n");
    }

    private static void weeks(JsonNode report, double[][] expected, String divisor) {
        assertThat(report.get("divisor").asString()).isEqualTo(divisor);
        JsonNode weeks = report.at("/people/0/weeks");
        assertThat(weeks.size()).isEqualTo(4);
        for (int i = 0; i < 4; i++) {
            assertThat(weeks.get(i).get("series").asString()).isEqualTo("done");
            assertThat(weeks.get(i).get("total").asDouble()).isEqualTo(expected[i][0]);
            assertThat(weeks.get(i).get("monotony").asDouble()).isCloseTo(expected[i][1], within(0.0005));
            assertThat(weeks.get(i).get("strain").asDouble()).isCloseTo(expected[i][2], within(0.05));
        }
    }

    /** On 2020-09-06: coupled 1.609, uncoupled 2.019, exponentially weighted 1.293; by hand from the data set. */
    @Test
    void three_verdicts_on_one_month() throws IOException {
        JsonNode report = json(scenario(history(false)));

        JsonNode ratio = report.at("/people/0/ratios/0");
        assertThat(ratio.get("day").asString()).isEqualTo("2020-09-06");
        assertThat(ratio.get("plannedFrom").isNull()).isTrue();
        assertThat(ratio.get("coupled").asDouble()).isCloseTo(1.609, within(0.0005));
        assertThat(ratio.get("uncoupled").asDouble()).isCloseTo(2.019, within(0.0005));
        assertThat(ratio.get("weighted").asDouble()).isCloseTo(1.293, within(0.0005));
        assertThat(report.get("caveat").asString()).contains("does not predict injury");
        assertThat(report.get("critiques").size()).isEqualTo(3);
        assertThat(report.get("conventions").size()).isEqualTo(3);
    }

    @Test
    void leaving_out_days_without_a_session_changes_nothing() throws IOException {
        JsonNode written = json(scenario(history(true)));

        assertThat(json(scenario(history(false)))).isEqualTo(written);
    }

    @Test
    void a_plan_stands_beside_what_was_done_and_is_never_added_to_it() throws IOException {
        String scenario = scenario(history(false));

        JsonNode report = json(scenario, plan());

        JsonNode week = report.at("/people/0/weeks/4");
        assertThat(week.get("series").asString()).isEqualTo("planned");
        assertThat(week.get("days").toString()).isEqualTo("[0,420,160,0,0,0,0]");
        assertThat(week.get("total").asDouble()).isEqualTo(580);
        assertThat(week.get("change").asDouble()).as("580 after 3150").isCloseTo(-81.587, within(0.0005));
        assertThat(week.get("changeOn").asString()).isEqualTo("done");
        assertThat(week.at("/work/runs").asDouble()).isEqualTo(1400);
        assertThat(week.at("/work/sets/knee-dominant").asInt()).isEqualTo(6);
        JsonNode ahead = report.at("/people/0/ratios/1");
        assertThat(ahead.get("plannedFrom").asString()).isEqualTo("2020-09-07");
        JsonNode athlete = report.at("/people/1");
        assertThat(athlete.get("group").asBoolean()).isFalse();
        assertThat(athlete.at("/weeks/4/days")).isEqualTo(week.get("days"));
    }

    @Test
    void the_age_of_an_exposure_is_counted_to_the_end_of_the_plan() throws IOException {
        JsonNode exposure = json(scenario(history(false)), plan()).at("/people/0/exposures/0");

        assertThat(exposure.get("quality").asString()).isEqualTo("knee-dominant");
        assertThat(exposure.get("lastDone").isNull()).isTrue();
        assertThat(exposure.get("nextPlanned").asString()).isEqualTo("2020-09-08");
        assertThat(exposure.get("daysAtEnd").asInt()).isEqualTo(5);
    }

    private static final String LOG = """
            { "weekwright": 1, "scenario": "club", "entries": [
              { "group": "squad", "family": "heavy-lower-knee", "start": "2020-09-08T11:00", "minutes": 50, "rpe": 8,
                "people": [ { "athlete": "a1", "rpe": 9, "minutes": 40 } ] },
              { "group": "squad", "family": "tempo-run", "start": "2020-09-09T10:00", "minutes": 40, "done": false },
              { "group": "squad", "family": "mobility", "start": "2020-09-09T12:00", "minutes": 20, "rpe": 1 } ] }
            """;

    @Test
    void a_log_is_compared_with_the_plan() throws IOException {
        Files.writeString(folder.resolve("log.json"), LOG);

        JsonNode report = json(
                scenario(history(false)),
                plan(),
                "--log",
                folder.resolve("log.json").toString());

        assertThat(report.get("doneUntil").asString()).isEqualTo("2020-09-09");
        assertThat(report.at("/people/0/weeks/4/series").asString()).isEqualTo("done");
        assertThat(report.at("/people/0/weeks/4/days").toString()).isEqualTo("[0,400,20]");
        assertThat(report.at("/people/0/weeks/4/monotony").isNull())
                .as("three days are no week")
                .isTrue();
        assertThat(report.at("/people/1/weeks/4/days").toString())
                .as("9 × 40 AU")
                .isEqualTo("[0,360,20]");
        assertThat(report.get("log")
                        .valueStream()
                        .map(checked -> checked.get("what").asString() + ": "
                                + checked.get("text").asString()))
                .containsExactly(
                        "changed: Heavy lower, knee-dominant: planned for Tue 8 Sep 10:00; 50 min, 60 were planned.",
                        "missed: Tempo run was missed.",
                        "extra: Mobility was not planned.");
    }

    @Test
    void a_folder_brings_its_plan_and_its_log() throws IOException {
        scenario(history(false));
        plan();
        Files.writeString(folder.resolve("log.json"), LOG);

        assertThat(json(folder.toString()).get("doneUntil").asString()).isEqualTo("2020-09-09");
        assertThat(folder).isDirectoryNotContaining(path -> path.endsWith("history"));
    }

    @Test
    void it_is_read_in_one_look() throws IOException {
        assertThat(trial.run("load", scenario(history(false)), plan())).isZero();

        assertThat(trial.out()).startsWith("""
                Load · A club
                In AU: effort (RPE) times minutes; a day without a session counts 0. Done is what was reported, up
                to Sun 6 Sep; planned is what coaches intend. They are never added up.

                Squad
                Week from         Mon   Tue   Wed   Thu   Fri   Sat   Sun    week      change  monotony  strain
                10 Aug done       280   300     0   240   240   240   100    1400           –      1.84    2570
                17 Aug done       180   240   450   140   360    40     0    1410      +0.7 %      1.24    1743
                24 Aug done       350   240   490    40     0   120   630    1870  !! +32.6 %      1.13    2119
                31 Aug done       720   180   500   210   580   720   240    3150  !! +68.4 %      1.89    5956
                 7 Sep planned      0   420   160     0     0     0     0     580    −81.6 %*      0.52     300

                10 Aug done    –
                17 Aug done    –
                24 Aug done    –
                31 Aug done    –
                 7 Sep planned 1400 m of runs · knee dominant 6 sets

                Ratio on Sun 6 Sep (all of it done): coupled 1.61, uncoupled 2.02, weighted 1.29.
                Ratio on Sun 13 Sep (planned from Mon 7 Sep on): coupled 0.33, uncoupled 0.27, weighted 0.42.
                knee dominant: never done, next planned Tue 8 Sep, the last 5 days before the end of the plan.

                Athletes, last week of each           week      change  monotony  strain
                R. Ash             31 Aug done        3150  !! +68.4 %      1.89    5956
                                    7 Sep planned      580    −81.6 %*      0.52     300
                """);
        assertThat(trial.out())
                .contains("Monotony: mean ÷ standard deviation of the days, divisor n − 1")
                .contains("does not predict injury", "Lolli et al. 2019", "No causal or conceptual basis");
        assertThat(trial.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void without_a_plan_and_without_history_nothing_is_made_up() throws IOException {
        assertThat(trial.run("load", scenario(""))).isZero();

        assertThat(trial.out()).contains("nothing so far", "Squad\nNothing is known.\n");
    }

    @Test
    void days_all_alike_have_no_monotony() throws IOException {
        String even = Stream.iterate(java.time.LocalDate.of(2020, 8, 31), day -> day.plusDays(1))
                .limit(7)
                .map(day -> """
                        { "group": "squad", "family": "technique", "start": "%sT10:00", "minutes": 30, "rpe": 10 }\
                        """.formatted(day))
                .collect(java.util.stream.Collectors.joining(","));

        trial.run("load", scenario(even));

        assertThat(trial.out())
                .contains(
                        "31 Aug done       300   300   300   300   300   300   300    2100           –         –       –");
    }

    @Test
    void a_faulty_log_is_refused_with_all_its_faults() throws IOException {
        Files.writeString(
                folder.resolve("log.json"),
                LOG.replace("\"rpe\": 9", "\"rpe\": 19").replace("tempo-run", "tempo-rum"));

        assertThat(trial.run(
                        "load",
                        scenario(""),
                        "--log",
                        folder.resolve("log.json").toString()))
                .isEqualTo(2);
        assertThat(trial.err()).hasLineCount(2).contains("entries[0].people[0].rpe", "tempo-run");
        assertThat(trial.run("load", "-", "--log", "-")).isEqualTo(2);
        assertThat(trial.run("load", scenario(""), "--log", "nowhere.json")).isEqualTo(4);
    }

    @Test
    void standard_input_may_bring_the_log() throws IOException {
        String scenario = scenario(history(false));
        trial.in(LOG.getBytes(StandardCharsets.UTF_8));

        assertThat(json(scenario, "--log", "-").get("doneUntil").asString()).isEqualTo("2020-09-09");
    }
}
