package weekwright.desk.view.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.desk.view.sheet.DaySheets.Wish;
import weekwright.desk.view.terminal.Ink;
import weekwright.desk.view.terminal.Plain;
import weekwright.desk.view.terminal.SheetText;
import weekwright.engine.Engine;
import weekwright.engine.explain.Judged;
import weekwright.model.answer.DaySheet;
import weekwright.model.answer.DaySheet.Out;
import weekwright.model.answer.DaySheet.Row;
import weekwright.model.answer.DaySheet.Session;
import weekwright.model.answer.DaySheet.Why;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.plan.Plan;
import weekwright.model.prescription.Caution;
import weekwright.model.prescription.RepMax;
import weekwright.model.prescription.Units;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.Scenarios;

/** Who is on a sheet, what is different for whom, and which cautions it carries. */
class DaySheetsTest {
    private static final String USUAL = """
            { "id": "a1", "name": "R. Ash", "groups": ["squad"] }""";

    private String groupMore = "";
    private String athletes = USUAL;
    private String fixtures = "";
    private String commitments = "";
    private String history = "";

    private Scenario scenario() {
        String text = """
                { "weekwright": 1, "id": "club", "zone": "Europe/Dublin", "firstDay": "2027-03-01", "days": 7,
                  "groups": [ { "id": "squad", "label": "Squad", "kind": "field" %s } ],
                  "athletes": [ %s ], "fixtures": [ %s ], "commitments": [ %s ], "history": [ %s ],
                  "facilities": [ { "id": "gym", "label": "Gym", "offers": ["gym"] },
                                  { "id": "turf", "label": "Turf", "offers": ["field"], "straightMetres": 90 } ] }
                """.formatted(groupMore, athletes, fixtures, commitments, history);
        try {
            return Documents.readScenario("scenario.json", text.getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    private Session session(String placement) {
        DaySheet sheet = sheet(placement, null);
        return sheet.groups()
                .get(0)
                .sessions()
                .get(sheet.groups().get(0).sessions().size() - 1);
    }

    private DaySheet sheet(String placement, @Nullable String athlete) {
        Scenario scenario = scenario();
        String text = """
                { "weekwright": 1, "scenario": "club", "placements": [ { "group": "squad", %s } ] }
                """.formatted(placement);
        try {
            Plan plan = Documents.readPlan("plan.json", text.getBytes(StandardCharsets.UTF_8), scenario);
            Judged judged = Engine.judge(scenario, plan);
            LocalDate day = judged.plan().placements().get(0).start().date();
            return DaySheets.of(
                    scenario,
                    judged,
                    Engine.people(scenario, judged.plan()),
                    new Wish(day, athlete, Units.METRIC, RepMax.EPLEY));
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    private static String fly(String more) {
        return "\"family\": \"max-velocity\", \"start\": \"2027-03-03T17:00\", \"facility\": \"turf\"" + more;
    }

    private static final String SQUATS =
            "\"family\": \"heavy-lower-knee\", \"start\": \"2027-03-03T17:00\", \"facility\": \"gym\"";

    @Test
    void who_is_away_is_elsewhere_and_gets_no_other_work() {
        athletes = USUAL + """
                , { "id": "a2", "name": "O. Nlooker", "groups": ["squad"],
                    "away": [ { "from": "2027-03-03T16:00", "to": "2027-03-03T18:00", "why": "exam" } ] }""";

        Session session = session(fly(""));

        assertThat(session.out()).containsExactly(new Out("a2", "O. Nlooker", Why.ELSEWHERE, null));
        assertThat(session.plans().get(0).athletes()).extracting(Row::athlete).containsExactly("a1");
    }

    @Test
    void who_may_not_squat_presses_and_pulls_but_not_on_the_day_before_the_upper_body() {
        athletes = """
                { "id": "a1", "name": "R. Ash", "groups": ["squad"], "restrictions": [ { "pathways": ["knee-dominant"],
                  "upTo": "light", "from": "2027-03-01", "to": "2027-03-05", "why": "a clinician's word" } ] }""";

        assertThat(session(SQUATS).out().get(0).instead().family()).isEqualTo("upper-strength");
        String both = SQUATS
                + " }, { \"group\": \"squad\", \"family\": \"upper-strength\", \"start\": \"2027-03-04T17:00\", \"facility\":"
                + " \"gym\"";
        assertThat(session(both).out().get(0).instead().family())
                .as("the upper body comes again within 40 h")
                .isEqualTo("trunk-and-balance");
        assertThat(Documents.write(sheet(SQUATS, null)))
                .as("the reason stays with the coach")
                .doesNotContain("a clinician's word");
    }

    @Test
    void a_session_for_those_who_did_not_play_names_only_them() {
        athletes = USUAL + """
                , { "id": "a2", "name": "O. Nlooker", "groups": ["squad"] }""";
        groupMore = """
                , "aims": [ { "family": "top-up-run", "for": "not-played", "perWeek": { "least": 0, "target": 1, "most": 1 }, "priority": "main" } ]""";
        fixtures = """
                { "id": "r1", "groups": ["squad"], "start": "2027-03-02T19:00", "minutes": 105, "expected": [ { "athlete": "a2", "minutes": 0 } ] }""";

        Session session =
                session("\"id\": \"squad/top-up-run+not-played/2027-03-01/1\", \"family\": \"top-up-run\", \"start\":"
                        + " \"2027-03-03T17:00\"");

        assertThat(session.plans()).hasSize(1);
        assertThat(session.plans().get(0).athletes()).extracting(Row::athlete).containsExactly("a2");
        assertThat(session.plans().get(0).others()).isZero();
    }

    @Test
    void first_maximal_sprinting_after_more_than_two_weeks_is_half_of_it() {
        history = """
                { "group": "squad", "family": "max-velocity", "start": "2027-02-16T17:00", "minutes": 65 }""";
        assertThat(session(fly("")).plans().get(0).athletes().get(0).remarks())
                .containsExactly("first maximal sprinting for 15 days: at most 50 % of the runs");

        history = history.replace("02-16", "02-17");
        assertThat(session(fly("")).plans().get(0).athletes().get(0).remarks())
                .as("14 days")
                .isEmpty();
        history = "";
        assertThat(session(fly("")).plans().get(0).athletes().get(0).remarks())
                .as("nothing is known")
                .isEmpty();
    }

    @Test
    void who_missed_the_last_time_has_been_without_for_longer() {
        athletes = USUAL + """
                , { "id": "a2", "name": "O. Nlooker", "groups": ["squad"] }""";
        history = """
                { "group": "squad", "family": "max-velocity", "start": "2027-02-10T17:00", "minutes": 65 },
                { "group": "squad", "family": "max-velocity", "start": "2027-02-24T17:00", "minutes": 65, "except": ["a2"] }""";

        List<Row> rows = session(fly("")).plans().get(0).athletes();

        assertThat(rows.get(0).remarks()).isEmpty();
        assertThat(rows.get(1).remarks())
                .containsExactly("first maximal sprinting for 21 days: at most 50 % of the runs");
    }

    @Test
    void a_minor_is_not_tested_to_the_maximum() {
        athletes = """
                { "id": "a1", "name": "R. Ash", "groups": ["squad"], "born": "2009-03-04" },
                { "id": "a2", "name": "O. Nlooker", "groups": ["squad"], "born": "2009-03-03" }""";

        DaySheet sheet = sheet("\"family\": \"testing\", \"start\": \"2027-03-03T17:00\"", null);

        List<Row> rows = sheet.groups().get(0).sessions().get(0).plans().get(0).athletes();
        assertThat(rows.get(0).remarks())
                .containsExactly("under 18: no maximal lift; a clean, supervised set of 3 to 5 instead");
        assertThat(rows.get(1).remarks()).as("18 today").isEmpty();
        assertThat(sheet.cautions()).contains(Caution.MINORS.text(), Caution.TESTS.text());
    }

    @Test
    void impossible_marks_are_named_and_not_used() {
        athletes = """
                { "id": "a1", "name": "R. Ash", "groups": ["squad"], "marks": [
                  { "measure": "lift", "lift": "back-squat", "kg": 900, "repetitions": 1, "date": "2027-02-20" } ] }""";

        Row row = session(SQUATS).plans().get(0).athletes().get(0);

        assertThat(row.remarks())
                .containsExactly("back-squat 900 kg is more than anybody has lifted: not used, check it");
        assertThat(row.targets()).noneMatch(target -> target.to() != null);
    }

    @Test
    void cautions_are_those_that_the_day_calls_for() {
        assertThat(sheet(SQUATS, null).cautions()).containsExactly(Caution.STOP.text());
        assertThat(sheet(fly(""), null).cautions()).containsExactly(Caution.STOP.text(), Caution.WEATHER.text());
        groupMore = ", \"phase\": \"return\"";
        assertThat(sheet(SQUATS, null).cautions()).containsExactly(Caution.STOP.text(), Caution.RETURN.text());
    }

    @Test
    void dose_week_and_taper_are_said_and_carried_out() {
        assertThat(session(SQUATS + ", \"dose\": \"reduced\"").remarks())
                .containsExactly("Reduced dose: two thirds of the main part.");
        groupMore = """
                , "aims": [ { "family": "heavy-lower-knee", "perWeek": { "least": 0, "target": 1, "most": 1 }, "priority": "main", "weeks": [0.7] } ]""";
        Session light = session("\"id\": \"squad/heavy-lower-knee/2027-03-01/1\", " + SQUATS);
        assertThat(light.remarks()).containsExactly("This week 70 % of the usual main part.");
        groupMore = "";
        fixtures = """
                { "id": "final", "groups": ["squad"], "start": "2027-03-13T15:00", "minutes": 105, "taperDays": 14 }""";
        Session taper = session(SQUATS);
        assertThat(taper.remarks()).containsExactly("Taper: at most 70 % of the sets, as fast and as heavy as ever.");
        assertThat(taper.plans().get(0).lines().stream()
                        .filter(line -> line.label().equals("Back squat"))
                        .findFirst()
                        .orElseThrow()
                        .sets())
                .as("of 4")
                .isEqualTo(2);
    }

    @Test
    void who_comes_from_practice_is_warm() {
        commitments = """
                { "id": "tactics", "label": "Tactics", "groups": ["squad"], "family": "team-practice", "start": "2027-03-03T15:45", "minutes": 60 }""";

        assertThat(session(fly("")).warmUpMinutes())
                .as("the day's first sprint")
                .isEqualTo(10);
        assertThat(session("\"family\": \"tempo-run\", \"start\": \"2027-03-03T17:00\"")
                        .warmUpMinutes())
                .isEqualTo(5);
        assertThat(session("\"family\": \"tempo-run\", \"start\": \"2027-03-03T17:01\"")
                        .warmUpMinutes())
                .as("16 min later")
                .isEqualTo(10);
    }

    @Test
    void a_sheet_for_one_athlete_names_no_other() {
        athletes = USUAL + """
                , { "id": "a2", "name": "O. Nlooker", "groups": ["squad"] }""";

        DaySheet sheet = sheet(fly(""), "a2");

        assertThat(Documents.write(sheet)).contains("O. Nlooker").doesNotContain("R. Ash");
        assertThat(sheet.groups().get(0).sessions().get(0).plans().get(0).others())
                .isZero();
    }

    static List<String> demos() {
        return Scenarios.all().stream().map(Demo::name).toList();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void every_line_of_every_sheet_fits_and_has_a_target_for_each_athlete(String demo) {
        Scenario scenario = Scenarios.read(demo);
        Plan empty = new Plan(1, scenario.id(), null, null, null, List.of(), List.of(), List.of(), null, List.of());
        Judged judged = Engine.judge(scenario, empty);
        for (Units units : Units.values()) {
            Wish wish = new Wish(scenario.firstDay(), null, units, RepMax.EPLEY);
            DaySheet sheet = DaySheets.of(scenario, judged, Engine.people(scenario, judged.plan()), wish);
            assertThat(SheetText.of(SheetPages.of(sheet, null, scenario.zone()), Ink.PLAIN)
                            .lines())
                    .allSatisfy(line -> assertThat(Plain.columns(line)).isLessThanOrEqualTo(100));
        }
    }
}
