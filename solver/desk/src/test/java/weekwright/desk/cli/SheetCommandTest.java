package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The sheet of a day, asked on the command line. */
class SheetCommandTest {
    /** Written by hand: squats on Tuesday noon, flying sprints on Wednesday. */
    private static final String PLAN = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "facility": "gym" },
              { "group": "first-squad", "family": "max-velocity", "start": "2027-02-10T10:00", "facility": "track" } ] }
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();

    private int sheet(String... more) {
        List<String> arguments = new ArrayList<>(List.of("sheet", "demo:one-match", "-"));
        arguments.addAll(List.of(more));
        return trial.in(PLAN.getBytes(StandardCharsets.UTF_8)).run(arguments.toArray(String[]::new));
    }

    /**
     * Kilograms by hand, Epley: 140 × 3 is 154.0, 82.5 to 87.5 % of it 127.05 to 134.75, so 127.5 to 132.5 on the bar;
     * 90 × 5 is 105.0, for a novice 80 to 82.5 %, 84.0 to 86.6, only rounded down: 82.5 to 85.
     */
    @Test
    void a_day_in_the_weights_room() {
        assertThat(sheet("--day", "2027-02-09")).as(trial.err()).isZero();

        assertThat(trial.out()).isEqualTo("""
                Tue 9 Feb 2027
                Kilmarrow first squad, one league match on Saturday

                First squad · MD−4 · high day

                10:30–11:55  Team practice · Training pitch

                12:00–13:00  Heavy lower, knee-dominant · Weights room · A. Corrigate, strength
                  Warm-up 10 min: Bike or rope 5 min, hips, trunk and shoulders 4 min; sets of the first lift: empty
                                  bar × 8, 50 % × 5, 70 % × 3, 80 % × 1 of the day's weight
                  Back squat                        4 × 3     82.5–87.5 % of maximum, 2 in reserve; rest 3 min 30 s
                  Split squat or step-up, each leg  2 × 6     3 in reserve; rest 2 min
                  Calf raise                        2 × 8     3 in reserve; rest 1 min 15 s
                  Trunk: dead bug or side bridge    2 × 30 s  rest 30 s
                  Novices, else as above
                  Back squat  3 × 5  80–82.5 % of maximum, 3 in reserve; rest 3 min 30 s
                  Advanced, else as above
                  Back squat  4 × 2  87.5–90 % of maximum, 2 in reserve; rest 3 min 30 s
                                        Back squat      warm-up sets
                  R. Tarrow             127.5–132.5 kg  20 · 65 · 92.5 · 105    estimated
                  D. Quillane           122.5–130 kg    20 · 65 · 90 · 105
                  J. Ostrey             110–115 kg      20 · 57.5 · 80 · 92.5   estimated
                  B. Sarkett            117.5–125 kg    20 · 62.5 · 87.5 · 100  estimated
                  C. Haverin            120–127.5 kg    20 · 62.5 · 90 · 102.5  estimated
                  E. Drummory           112.5–117.5 kg  20 · 57.5 · 82.5 · 95
                  S. Fennimar (novice)  82.5–85 kg      20 · 42.5 · 60 · 67.5   estimated
                  L. Wendle (advanced)  157.5–162.5 kg  20 · 80 · 112.5 · 130   estimated
                  Others (13): by feel: 2 more could be done.
                  M. Pellor sits out; instead Upper push and pull: Bench press 3 × 3, by feel: 2 more could be done;
                  Bench pull 3 × 3, by feel: 2 more could be done; Pull-up or row 2 × 6; Push-up or dip 2 × 6

                ! Pain, illness or a knock to the head: stop and refer; a return follows the clinician's protocol.
                ! Who sits out or does other work stays inside what the clinician allows. This sheet clears nobody.
                ! Heat, cold, air, lightning and surface: the local authority and the venue decide.
                """);
        assertThat(trial.err()).isEmpty();
    }

    /** Times by hand: flying 10 m in 1.04 s is 2.08 for 20 m; 2.08 / 0.95 = 2.189, / 0.90 = 2.311, both rounded down. */
    @Test
    void one_athlete_s_day_on_the_track_says_where_the_numbers_come_from() {
        assertThat(sheet("--day", "2027-02-10", "--athlete", "a01")).isZero();

        assertThat(trial.out()).isEqualTo("""
                Wed 10 Feb 2027 · R. Tarrow
                Kilmarrow first squad, one league match on Saturday

                First squad · MD−3 · high day

                10:00–11:05  Maximal velocity sprinting · Town track · H. Wrenlow, speed
                  Warm-up 25 min: Easy running and skipping 5 min, joint circles; Leg swings, walking lunges, calf
                                  and hamstring work 5 min; Sprint drills over 20 m: ankling, A-skip, straight-leg
                                  bounds, 2 of each, walk back; Build-ups over 40 m: 3, each faster, to nearly full
                                  speed
                  Flying sprint  5 × 20 m + 30 m run-in  95 % or more of best speed; rest 5 min
                    tall, relaxed; build up over the run-in
                  Stop after two runs in a row more than 3 % slower than the day's best. 100 m fast in all.
                             20 m flying
                  R. Tarrow  ≤ 2.18 s (not over 2.31)  estimated; from flying 10 m 1.04 s
                  In brackets: a slower run is no speed work any more.

                ! Pain, illness or a knock to the head: stop and refer; a return follows the clinician's protocol.
                ! Heat, cold, air, lightning and surface: the local authority and the venue decide.
                """);
    }

    /** 154.0 kg is 339.5 lb; 82.5 to 87.5 % of it 280.1 to 297.1 lb. 30 m is 32.8 yd, 100 m 109.4 yd. */
    @Test
    void pounds_and_yards() {
        assertThat(sheet("--day", "2027-02-09", "--athlete", "a01", "--units", "imperial"))
                .isZero();
        assertThat(trial.out()).contains("R. Tarrow  280–295 lb  45 · 145 · 205 · 235  estimated");

        sheet("--day", "2027-02-10", "--athlete", "a01", "--units", "imperial");
        assertThat(trial.out())
                .contains("Flying sprint  5 × 21.9 yd + 32.8 yd run-in")
                .contains("109.4 yd fast in all.");
    }

    /** 140 × 3 by Brzycki is 148.235 (formula of 1993, JOPERD 64(1):88-90): 122.3 to 129.7 kg. */
    @Test
    void another_formula() {
        sheet("--day", "2027-02-09", "--athlete", "a01", "--formula", "brzycki");

        assertThat(trial.out()).contains("R. Tarrow  122.5–127.5 kg");
    }

    @Test
    void who_sits_out_is_said_and_never_why() {
        for (String form : List.of("--json", "--html=" + folder.resolve("a.html"))) {
            assertThat(sheet("--day", "2027-02-09", form)).isZero();
        }
        String all = trial.out() + read(folder.resolve("a.html"));

        assertThat(all).contains("sits out").doesNotContain("knee-dominant\",", "2027-02-14");
        sheet("--day", "2027-02-09", "--json");
        JsonNode out = JsonMapper.shared().readTree(trial.out()).at("/groups/0/sessions/0/out/0");
        assertThat(out.propertyNames()).containsExactly("athlete", "name", "why", "instead");
        assertThat(out.get("why").asString()).isEqualTo("sits-out");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void json_has_a_target_for_each_line() {
        sheet("--day", "2027-02-10", "--json");

        JsonNode sheet = JsonMapper.shared().readTree(trial.out());
        assertThat(sheet.get("day").asString()).isEqualTo("2027-02-10");
        JsonNode plan = sheet.at("/groups/0/sessions/0/plans/0");
        plan.get("athletes")
                .forEach(row -> assertThat(row.get("targets").size())
                        .isEqualTo(plan.get("lines").size()));
        assertThat(plan.at("/athletes/0/targets/4/to").asDouble()).isEqualTo(2.18);
        assertThat(plan.at("/athletes/0/targets/4/limit").asDouble()).isEqualTo(2.31);
    }

    @Test
    void a_pdf_holds_a_page_a_group_with_every_name() throws IOException {
        Path file = folder.resolve("day.pdf");

        assertThat(sheet("--day", "2027-02-09", "--pdf", file.toString())).isZero();

        assertThat(trial.out()).isEmpty();
        assertThat(trial.err()).isEqualTo("Written into " + file.toRealPath() + ".\n");
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("First squad", "MD−4", "R. Tarrow", "127.5–132.5 kg", "L. Wendle", "M. Pellor sits out");
        }
    }

    @Test
    void a_free_day_is_said_to_be_one() {
        assertThat(sheet("--day", "2027-02-14")).isZero();

        assertThat(trial.out()).contains("Nothing lies on this day.");
    }

    @Test
    void what_is_not_there_is_refused_with_what_would_be_right() {
        refused("--day is \"Tuesday\": give a date, such as 2027-02-08\n", "--day", "Tuesday");
        refused("2027-03-01 is no day of this plan: give one from 2027-02-08 to 2027-02-14\n", "--day", "2027-03-01");
        refused("no athlete is called \"a91\": did you mean a01?\n", "--day", "2027-02-09", "--athlete", "a91");
        refused("--units is \"stone\": known are metric, imperial\n", "--day", "2027-02-09", "--units", "stone");
        refused("--formula is \"eply\": did you mean epley?\n", "--day", "2027-02-09", "--formula", "eply");
        assertThat(trial.run("sheet", "demo:one-match", "--day", "2027-02-09")).isEqualTo(2);
        assertThat(trial.err()).startsWith("PLAN is missing");
        assertThat(sheet("--day", "2027-02-09", "--html", "a", "--pdf", "b")).isEqualTo(2);
    }

    private void refused(String message, String... arguments) {
        assertThat(sheet(arguments)).isEqualTo(2);
        assertThat(trial.err()).isEqualTo(message);
        assertThat(trial.out()).isEmpty();
    }
}
