package weekwright.model.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Log;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Commitment;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.Window;

/** The week that begins from an earlier one: what holds goes on, what is of a date moves by whole weeks or ends. */
class NextWeekTest {
    /** The week before the clocks go forward in Dublin, on 28 March 2027. */
    private static final String BEFORE = """
            { "weekwright": 1, "id": "late-march", "title": "Late March", "zone": "Europe/Dublin",
              "firstDay": "2027-03-22", "days": 7,
              "groups": [ { "id": "squad", "headcount": 12,
                            "windows": [ { "days": ["MON", "TUE"], "from": "16:00", "to": "20:00" },
                                         { "date": "2027-03-27", "from": "10:00", "to": "12:00" } ],
                            "away": [ { "from": "2027-03-23T16:00", "to": "2027-03-23T18:00", "why": "exam" },
                                      { "from": "2027-03-31T16:00", "to": "2027-03-31T18:00", "why": "exam" } ],
                            "aims": [ { "family": "max-velocity", "perWeek": { "least": 1, "target": 1, "most": 1 }, "priority": "key",
                                        "weeks": [0.8] } ] } ],
              "athletes": [ { "id": "a1", "groups": ["squad"],
                              "restrictions": [ { "pathways": ["hip-dominant"], "upTo": "light",
                                                  "from": "2027-03-20", "to": "2027-03-25" },
                                                { "pathways": ["hip-dominant"], "upTo": "none",
                                                  "from": "2027-03-20", "to": "2027-03-29" } ] } ],
              "fixtures": [ { "id": "league", "groups": ["squad"], "start": "2027-03-27T15:00", "minutes": 110,
                              "expected": [ { "athlete": "a1", "minutes": 30 } ] },
                            { "id": "cup", "groups": ["squad"], "start": "2027-04-03T15:00", "minutes": 110 } ],
              "commitments": [ { "id": "practice", "groups": ["squad"], "family": "team-practice",
                                 "start": "2027-03-25T18:00", "minutes": 75 } ],
              "facilities": [ { "id": "gym", "offers": ["gym"],
                                "open": [ { "date": "2027-03-24", "from": "09:00", "to": "12:00" } ],
                                "closed": [ { "from": "2027-03-22T00:00", "to": "2027-03-23T00:00" } ] } ],
              "history": [ { "id": "h1", "group": "squad", "family": "tempo-run", "start": "2027-02-25T10:00",
                             "minutes": 40 },
                           { "group": "squad", "family": "tempo-run", "start": "2027-03-18T10:00", "minutes": 40 } ] }
            """;

    private static final LocalDate NEXT = LocalDate.parse("2027-03-29");

    private final Scenario before = scenario(BEFORE);
    private final NextWeek week = new NextWeek("april", "Early April", NEXT, 0, List.of());

    private static Scenario scenario(String json) {
        try {
            return Documents.readScenario("late-march.json", json.getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** What comes out can be written and read again. */
    private Scenario after(NextWeek next, List<LogEntry> done) {
        Scenario after = next.after(before, done);
        assertThat(scenario(Documents.write(after))).isEqualTo(after);
        return after;
    }

    @Test
    void what_is_fixed_moves_by_whole_weeks_at_the_same_time_on_the_clock() {
        Commitment practice = after(week, List.of()).commitments().get(0);
        assertThat(practice.start()).hasToString("2027-04-01T18:00");
        // 168 hours less the one that the clocks skip on the Sunday between.
        assertThat(Duration.between(
                        before.commitments().get(0).start().instant(before.zone()),
                        practice.start().instant(before.zone())))
                .hasHours(167);
    }

    @Test
    void fixtures_are_not_copied_but_those_known_to_come_stay() {
        Fixture home = Fixture.plain("home", "Home", List.of("squad"), null, Moment.parse("2027-03-31T19:00"), 110);
        NextWeek next = new NextWeek("april", "Early April", NEXT, 0, List.of(home));
        assertThat(after(next, List.of()).fixtures()).extracting(Fixture::id).containsExactly("cup", "home");
    }

    @Test
    void what_is_over_ends_and_what_is_not_stays_on_its_dates() {
        Scenario after = after(week, List.of());
        assertThat(after.groups().get(0).away()).hasSize(1);
        assertThat(after.groups().get(0).away().get(0).from()).hasToString("2027-03-31T16:00");
        assertThat(after.athletes().get(0).restrictions()).hasSize(1);
        assertThat(after.athletes().get(0).restrictions().get(0).to()).isEqualTo("2027-03-29");
        assertThat(after.facilities().get(0).closed()).isEmpty();
    }

    @Test
    void hours_that_have_all_ended_move_for_no_hours_would_mean_always() {
        Scenario after = after(week, List.of());
        assertThat(after.facilities().get(0).open())
                .extracting(Window::date)
                .containsExactly(LocalDate.parse("2027-03-31"));
        assertThat(after.groups().get(0).windows())
                .as("weekdays go on, the one Saturday does not")
                .hasSize(1);
    }

    @Test
    void what_was_done_becomes_history_as_far_back_as_history_reaches() {
        List<LogEntry> done = AsPlanned.done(before, List.of(), null);
        Scenario after = after(week, done);
        assertThat(after.history())
                .extracting(one -> one.start().toString())
                .as("28 days before 29 March is 1 March")
                .containsExactly("2027-03-18T10:00", "2027-03-25T18:00", "2027-03-27T15:00");
        LogEntry played = after.history().get(2);
        assertThat(played.fixture()).isNull();
        assertThat(played.people())
                .singleElement()
                .satisfies(one -> assertThat(one.minutes()).isEqualTo(30));
    }

    @Test
    void what_was_written_down_is_taken_before_what_was_planned() {
        AsPlanned fixture = AsPlanned.of(before, List.of()).get(1);
        LogEntry missed = new LogEntry(
                null,
                null,
                "league",
                "squad",
                "fixture",
                Moment.parse("2027-03-27T15:00"),
                110,
                null,
                null,
                null,
                false,
                List.of(),
                List.of(),
                "called off");
        assertThat(fixture.isOf(missed)).isTrue();
        List<LogEntry> done = AsPlanned.done(before, List.of(), new Log(1, "late-march", List.of(missed)));
        assertThat(done)
                .filteredOn(one -> one.family().equals("fixture"))
                .filteredOn(one -> one.start().date().equals(LocalDate.parse("2027-03-27")))
                .containsExactly(missed);
    }

    @Test
    void only_what_is_held_of_the_plan_is_held_again_a_week_later() {
        Plan plan = plan("""
                { "weekwright": 1, "scenario": "late-march", "placements": [
                  { "id": "squad/max-velocity/2027-03-22/1", "group": "squad", "family": "max-velocity",
                    "start": "2027-03-23T16:30", "pin": { "start": true, "notDays": ["2027-03-22"] } } ] }
                """);
        Placement held = week.held(before, plan).placements().get(0);
        assertThat(held.id()).isEqualTo("squad/max-velocity/2027-03-29/1");
        assertThat(held.start()).hasToString("2027-03-30T16:30");
        assertThat(held.held().notDays()).containsExactly(NEXT);
        List<Placement> loose = List.of(plan.placements().get(0).withPin(null));
        assertThat(week.held(before, plan.withPlacements(loose)).placements()).isEmpty();
    }

    private Plan plan(String json) {
        try {
            return Documents.readPlan("plan.json", json.getBytes(StandardCharsets.UTF_8), before);
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e);
        }
    }

    @Test
    void the_first_day_lies_whole_weeks_later() {
        NextWeek off = new NextWeek("april", "Early April", LocalDate.parse("2027-03-30"), 0, List.of());
        assertThatThrownBy(() -> off.after(before, List.of()))
                .hasMessage("2027-03-30 is not whole weeks after 2027-03-22: give 2027-03-29, 2027-04-05 and so on");
        NextWeek same = new NextWeek("april", "Early April", before.firstDay(), 0, List.of());
        assertThatThrownBy(() -> same.after(before, List.of())).hasMessageContaining("give 2027-03-29");
    }

    @Test
    void the_latest_week_with_one_game_is_offered_first() {
        assertThat(NextWeek.hasOneGame(before, 0)).isTrue();
        Scenario fortnight = scenario(BEFORE.replace("\"days\": 7", "\"days\": 14")
                .replace("\"start\": \"2027-04-03T15:00\"", "\"start\": \"2027-03-24T15:00\""));
        assertThat(NextWeek.hasOneGame(fortnight, 0)).as("two games in a week").isFalse();
        assertThat(NextWeek.latestWithOneGame(fortnight)).as("none: the last").isEqualTo(1);
        assertThat(NextWeek.latestWithOneGame(scenario(BEFORE.replace("\"days\": 7", "\"days\": 21"))))
                .as("of weeks 1 and 2 the later")
                .isEqualTo(1);
    }
}
