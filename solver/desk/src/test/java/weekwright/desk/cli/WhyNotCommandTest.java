package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Why a session does not lie elsewhere, asked on the command line. */
class WhyNotCommandTest {
    private static final String HEAVY = "first-squad/heavy-lower-knee/2027-02-08/1";

    /** Written by hand: heavy squats on Tuesday noon, all else left out. */
    private static final String PLAN = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "facility": "gym" } ] }
            """;

    private final Trial trial = new Trial();

    private int asked(String session, String... more) {
        List<String> arguments = new ArrayList<>(List.of("whynot", "demo:one-match", "-", "--session", session));
        arguments.addAll(List.of(more));
        return trial.in(PLAN.getBytes(StandardCharsets.UTF_8)).run(arguments.toArray(String[]::new));
    }

    @Test
    void the_week_is_told_day_by_day_on_less_than_a_screen() {
        assertThat(asked(HEAVY)).as(trial.err()).isZero();

        assertThat(trial.out()).isEqualTo("""
                        Heavy lower, knee-dominant of First squad lies on Tue 9 Feb 12:00. Best elsewhere: Tue 9 Feb 12:15,
                        costs nothing more.

                        Mon 8 Feb (MD+2)   can start 09:00 to 14:15; best at 13:00, costs 3.8 points more: The free day
                                           after the fixture of Sat 6 Feb is the first day after it, not the second (Mon 8
                                           Feb). Concerns 21 of 22 in First squad.
                        Tue 9 Feb (MD−4)   it lies here now, at 12:00; nothing else on this day is better.
                        Wed 10 Feb (MD−3)  can start 09:00 to 14:15; best at 09:00, costs 22.4 points more: Heavy lower,
                                           knee-dominant (Wed 10 Feb 09:00) ends 77 h before League round 21, home; 96 h are
                                           wanted, and 92 h count as enough. Concerns 19 of 22 in First squad. Load rises
                                           towards League round 21, home: 425 AU on Thu 11 Feb after 420 AU on Wed 10 Feb.
                                           Concerns 19 of 22 in First squad.
                        Thu 11 Feb (MD−2)  not possible; at 12:00, which comes nearest: Heavy lower, knee-dominant (Thu 11
                                           Feb 12:00) ends 50 h before League round 21, home; it must end at least 64 h
                                           before. Concerns 19 of 22 in First squad.
                        Fri 12 Feb (MD−1)  not possible; at 12:00, which comes nearest: Heavy lower, knee-dominant (Fri 12
                                           Feb 12:00) ends 26 h before League round 21, home; it must end at least 64 h
                                           before. Concerns 19 of 22 in First squad.
                        Sat 13 Feb (MD)    First squad has no free hours that are long enough.
                        Sun 14 Feb (MD+1)  not possible; at 11:00, which comes nearest: Heavy lower, knee-dominant (Sun 14
                                           Feb 11:00) has 60 min outside the opening hours of Weights room.
                        """);
        assertThat(trial.err()).isEmpty();
    }

    @Test
    void one_day_only() {
        assertThat(asked(HEAVY, "--day", "2027-02-11")).isZero();

        assertThat(trial.out().lines().filter(line -> line.contains(" Feb (MD")))
                .hasSize(1)
                .allMatch(line -> line.startsWith("Thu 11 Feb (MD−2)  "));
    }

    @Test
    void json_gives_every_option_and_the_days() {
        assertThat(asked(HEAVY, "--json")).isZero();

        JsonNode answer = JsonMapper.shared().readTree(trial.out());
        assertThat(answer.propertyNames()).containsExactly("session", "now", "totals", "options", "days", "text");
        assertThat(answer.get("session").asString()).isEqualTo(HEAVY);
        assertThat(answer.get("now").get("start").asString()).isEqualTo("2027-02-09T12:00");
        assertThat(answer.get("days").size()).isEqualTo(7);
        JsonNode now = answer.get("options")
                .valueStream()
                .filter(option -> option.get("start").asString().equals("2027-02-09T12:00"))
                .filter(option -> option.get("dose").asString().equals("full"))
                .findFirst()
                .orElseThrow();
        assertThat(now.get("possible").asBoolean()).isTrue();
        assertThat(now.get("change").get("want").asDouble()).isZero();
        assertThat(now.get("breaks").size() + now.get("clears").size()).isZero();
        assertThat(now.get("why").isNull()).isTrue();
        assertThat(answer.get("options").valueStream())
                .allMatch(option ->
                        option.get("possible").asBoolean() == option.get("why").isNull());
    }

    @Test
    void a_session_left_out_can_be_asked_for() {
        asked("first-squad/primer/2027-02-08/1");

        assertThat(trial.out()).startsWith("Primer of First squad is left out in the week from Mon 8 Feb.");
    }

    @Test
    void a_session_or_day_that_is_not_there_is_refused_with_what_would_be_right() {
        assertThat(asked("first-squad/heavy-lower-kne/2027-02-08/1")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("no session is called \"first-squad/heavy-lower-kne/2027-02-08/1\": did you mean " + HEAVY
                        + "?\n");
        assertThat(asked("Heavy lower")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo("no session is called \"Heavy lower\": those that there are follow\n  " + HEAVY
                        + "  Heavy lower, knee-dominant\n");
        assertThat(asked("squats")).isEqualTo(2);
        assertThat(trial.err())
                .contains("\n  " + HEAVY + "  Heavy lower, knee-dominant\n", "  Maximal velocity sprinting\n");
        assertThat(asked(HEAVY, "--day", "2027-02-15")).isEqualTo(2);
        assertThat(trial.err())
                .isEqualTo(HEAVY + " cannot lie on 2027-02-15, as a session stays in its week: give a day from"
                        + " 2027-02-08 to 2027-02-14\n");
        assertThat(asked(HEAVY, "--day", "Tuesday")).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("--day is \"Tuesday\": give a date, such as 2027-02-08\n");
        assertThat(trial.run("whynot", "-", "-", "--session", HEAVY)).isEqualTo(2);
        assertThat(trial.err()).isEqualTo("only one of SCENARIO and PLAN can come from standard input\n");
        assertThat(trial.run("whynot", "demo:one-match", "-")).isEqualTo(2);
        assertThat(trial.out()).isEmpty();
    }
}
