package weekwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the coach pins is held, moved or let go, and the plan is judged anew. */
class PinCommandTest {
    private static final String HEAVY = "first-squad/heavy-lower-knee/2027-02-08/1";
    private static final String SPEED = "first-squad/max-velocity/2027-02-08/1";

    /** Written by hand: heavy squats on Tuesday in the gym; the rest is left out. */
    private static final String PLAN = """
            { "weekwright": 1, "scenario": "kilmarrow-one-match", "placements": [
              { "group": "first-squad", "family": "heavy-lower-knee", "start": "2027-02-09T12:00", "facility": "gym" } ] }
            """;

    @TempDir
    private Path folder;

    private final Trial trial = new Trial();
    private String plan = PLAN;

    /** Pins something, prints the plan as JSON and goes on from it. */
    private JsonNode pin(String session, String... what) {
        List<String> arguments = new ArrayList<>(List.of("pin", "demo:one-match", "-", "--json", "--session", session));
        arguments.addAll(List.of(what));
        int code = trial.in(plan.getBytes(StandardCharsets.UTF_8)).run(arguments.toArray(String[]::new));
        assertThat(code).as(trial.err()).isIn(0, 3);
        plan = trial.out();
        return JsonMapper.shared().readTree(plan);
    }

    private String refused(String session, String... what) {
        List<String> arguments = new ArrayList<>(List.of("pin", "demo:one-match", "-", "--session", session));
        arguments.addAll(List.of(what));
        assertThat(trial.in(plan.getBytes(StandardCharsets.UTF_8)).run(arguments.toArray(String[]::new)))
                .isEqualTo(2);
        assertThat(trial.out()).isEmpty();
        return trial.err();
    }

    private static JsonNode placement(JsonNode plan, String id) {
        return plan.get("placements")
                .valueStream()
                .filter(placement -> placement.get("id").asString().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode leftOut(JsonNode plan, String id) {
        return plan.get("leftOut")
                .valueStream()
                .filter(left -> left.get("id").asString().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "start, start Tue 9 Feb 12:00 is held.",
        "day, day Tue 9 Feb is held.",
        "facility, place Weights room is held.",
        "dose, dose full is held.",
        "variant, lift Back squat is held."
    })
    void without_a_value_what_is_there_is_held(String kind, String said) {
        JsonNode pin = placement(pin(HEAVY, "--" + kind), HEAVY).get("pin");

        assertThat(pin.size()).isEqualTo(1);
        assertThat(pin.get(kind).asBoolean()).isTrue();
        assertThat(trial.err()).isEqualTo(HEAVY + ": " + said + "\n");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "start, start, 2027-02-10T12:30, start changes to Wed 10 Feb 12:30 and is held.",
        "day, start, 2027-02-10T12:00, day changes to Wed 10 Feb and is held.",
        "facility, facility, pitch, place changes to Training pitch and is held.",
        "dose, dose, reduced, dose changes to reduced and is held.",
        "variant, variant, box-squat, lift changes to Box squat and is held."
    })
    void with_a_value_it_is_moved_there_first(String kind, String field, String expected, String said) {
        String value = kind.equals("day") ? "2027-02-10" : expected;

        JsonNode moved = placement(pin(HEAVY, "--" + kind, value), HEAVY);

        assertThat(moved.get(field).asString()).isEqualTo(expected);
        assertThat(moved.get("pin").get(kind).asBoolean()).isTrue();
        assertThat(trial.err()).isEqualTo(HEAVY + ": " + said + "\n");
    }

    @Test
    void what_is_pinned_against_the_rules_is_kept_and_judged() {
        JsonNode before = pin(HEAVY, "--start");
        JsonNode after = pin(HEAVY, "--start", "2027-02-12T13:00");

        assertThat(after.get("totals").get("must").asDouble())
                .isEqualTo(before.get("totals").get("must").asDouble() + 1);
        assertThat(after.get("findings")
                        .valueStream()
                        .map(finding -> finding.get("rule").asString()))
                .contains("before-fixture");
        assertThat(trial.err()).isEqualTo(HEAVY + ": start changes to Fri 12 Feb 13:00 and is held.\n");
    }

    @Test
    void a_session_left_out_is_placed_by_a_start() {
        JsonNode placed = placement(pin(SPEED, "--start", "2027-02-11T10:00"), SPEED);

        assertThat(placed.get("facility").asString()).isEqualTo("track");
        assertThat(placed.get("dose").asString()).isEqualTo("full");
        assertThat(placed.get("minutes").asInt()).isEqualTo(65);
        assertThat(trial.err()).isEqualTo(SPEED + ": is placed, and its start Thu 11 Feb 10:00 is held.\n");
    }

    @Test
    void a_session_is_held_out_and_let_in_again() {
        JsonNode out = pin(HEAVY, "--out");
        assertThat(out.get("placements").size()).isZero();
        assertThat(leftOut(out, HEAVY).get("pin").get("out").asBoolean()).isTrue();
        assertThat(trial.err()).isEqualTo(HEAVY + ": is held out.\n");

        JsonNode in = pin(HEAVY, "--clear", "out");
        assertThat(leftOut(in, HEAVY).get("pin").isNull()).isTrue();
        assertThat(trial.err()).isEqualTo(HEAVY + ": is held out no more.\n");
    }

    @Test
    void days_are_barred_one_by_one() {
        pin(HEAVY, "--not-day", "2027-02-11");
        assertThat(trial.err()).isEqualTo(HEAVY + ": is barred on Thu 11 Feb.\n");
        JsonNode there = pin(HEAVY, "--not-day", "2027-02-09");
        assertThat(trial.err()).isEqualTo(HEAVY + ": is barred on Tue 9 Feb, where it lies: a new search moves it.\n");
        assertThat(placement(there, HEAVY)
                        .get("pin")
                        .get("notDays")
                        .valueStream()
                        .map(JsonNode::asString))
                .containsExactly("2027-02-09", "2027-02-11");
        assertThat(there.get("findings")
                        .valueStream()
                        .map(finding -> finding.get("rule").asString()))
                .contains("pins");

        pin(HEAVY, "--day");
        pin(HEAVY, "--not-day", "2027-02-09");
        assertThat(trial.err()).isEqualTo(HEAVY + ": is barred on Tue 9 Feb, where it is held.\n");
        pin(SPEED, "--not-day", "2027-02-12");
        assertThat(leftOut(pin(SPEED, "--not-day", "2027-02-10"), SPEED)
                        .get("pin")
                        .get("notDays")
                        .size())
                .isEqualTo(2);
    }

    @Test
    void pins_are_let_go_one_by_one_or_all_at_once() {
        pin(HEAVY, "--start");
        pin(HEAVY, "--dose");
        JsonNode one = pin(HEAVY, "--clear", "start");
        assertThat(placement(one, HEAVY).get("pin").size()).isEqualTo(1);
        assertThat(trial.err()).isEqualTo(HEAVY + ": start is pinned no more.\n");
        pin(HEAVY, "--clear", "lead");
        assertThat(trial.err()).isEqualTo(HEAVY + ": lead was not pinned.\n");
        assertThat(placement(pin(HEAVY, "--clear"), HEAVY).get("pin").isNull()).isTrue();
        assertThat(trial.err()).isEqualTo(HEAVY + ": has no pin any more.\n");
        pin(HEAVY, "--clear");
        assertThat(trial.err()).isEqualTo(HEAVY + ": had no pin.\n");
    }

    @Test
    void a_place_a_lead_and_a_start_may_be_given_as_a_coach_says_them() {
        assertThat(placement(pin(HEAVY, "--facility", "weights room"), HEAVY)
                        .get("facility")
                        .asString())
                .isEqualTo("gym");
        assertThat(placement(pin(HEAVY, "--lead", "A. Corrigate, strength"), HEAVY)
                        .get("lead")
                        .asString())
                .isEqualTo("c2");
        assertThat(placement(pin(HEAVY, "--start", "2027-02-10 12:30"), HEAVY)
                        .get("start")
                        .asString())
                .isEqualTo("2027-02-10T12:30");
    }

    @Test
    void the_plan_is_shown_and_written_where_that_is_asked() throws Exception {
        Path in = Files.writeString(folder.resolve("plan.json"), PLAN);
        Path file = folder.resolve("pinned.json");
        String[] pin = {"pin", "demo:one-match", in.toString(), "--session", HEAVY, "--variant"};

        assertThat(trial.run(pin)).isZero();
        assertThat(trial.err())
                .isEqualTo(HEAVY + ": lift Back squat is held.\nNothing is written: give -o PLAN to keep it.\n");
        assertThat(trial.out()).contains("Heavy lower, knee-dominant  Weights room    Back squat · ", "pinned: lift\n");

        String[] kept = java.util.Arrays.copyOf(pin, pin.length + 2);
        kept[pin.length] = "-o";
        kept[pin.length + 1] = file.toString();
        assertThat(trial.run(kept)).isZero();
        assertThat(trial.err()).isEqualTo(HEAVY + ": lift Back squat is held.\nWritten into " + file + ".\n");
        assertThat(trial.run("check", "demo:one-match", file.toString())).isZero();
    }

    @Test
    void what_cannot_be_is_refused_with_advice() {
        assertThat(refused("first-squad/max-velocty/2027-02-08/1", "--start"))
                .isEqualTo(
                        "no session is called \"first-squad/max-velocty/2027-02-08/1\": did you mean " + SPEED + "?\n");
        assertThat(refused(SPEED, "--day", "2027-02-11"))
                .isEqualTo(SPEED + " is not placed: give it a start first, such as --start 2027-02-08T10:00\n");
        assertThat(refused(HEAVY, "--start", "noon"))
                .isEqualTo("--start is \"noon\": give a time, such as 2027-02-08T10:00\n");
        assertThat(refused(HEAVY, "--day", "Friday"))
                .isEqualTo("--day is \"Friday\": give a date, such as 2027-02-08\n");
        assertThat(refused(HEAVY, "--not-day", "2027-02-15"))
                .isEqualTo(
                        HEAVY + " cannot lie on 2027-02-15, as a session stays in its week: give a day from 2027-02-08"
                                + " to 2027-02-14\n");
        assertThat(refused(HEAVY, "--facility", "gim")).isEqualTo("--facility is \"gim\": did you mean gym?\n");
        assertThat(refused(HEAVY, "--dose", "half")).isEqualTo("--dose is \"half\": known are full, reduced, micro\n");
        assertThat(refused(HEAVY, "--variant", "back-sqat"))
                .isEqualTo("--variant is \"back-sqat\": did you mean back-squat?\n");
        assertThat(refused(HEAVY, "--clear", "time"))
                .isEqualTo("--clear is \"time\": known are start, day, facility, lead, dose, variant, out, not-day\n");
    }

    @Test
    void nothing_to_hold_is_said() {
        pin("first-squad/trunk-and-balance/2027-02-08/1", "--start", "2027-02-09T10:00");
        assertThat(refused("first-squad/trunk-and-balance/2027-02-08/1", "--variant"))
                .isEqualTo(
                        "first-squad/trunk-and-balance/2027-02-08/1 has no lift to hold: there is none to" + " name\n");
        assertThat(refused("first-squad/trunk-and-balance/2027-02-08/1", "--facility"))
                .startsWith("first-squad/trunk-and-balance/2027-02-08/1 has no place to hold: name one of ");
        assertThat(refused(HEAVY))
                .isEqualTo("nothing is said of what to pin: give one of --start, --day, --facility, --lead, --dose,"
                        + " --variant, --out, --not-day and --clear\n");
    }
}
