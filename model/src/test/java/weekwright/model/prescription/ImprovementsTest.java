package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.Scenario;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/** Marks that a log betters. */
class ImprovementsTest {
    private static Scenario scenario() {
        return read("""
                { "weekwright": 1, "id": "club", "zone": "Europe/Dublin", "firstDay": "2027-02-08", "days": 7,
                  "groups": [ { "id": "squad", "aims": [] } ],
                  "athletes": [ { "id": "a1", "name": "R. Ash", "groups": ["squad"], "marks": [
                    { "measure": "sprint", "metres": 30, "seconds": 4.12, "start": "standing", "timing": "electronic", "date": "2027-01-11" },
                    { "measure": "lift", "lift": "back-squat", "kg": 140, "repetitions": 3, "date": "2027-01-13" } ] } ] }
                """);
    }

    private static Scenario read(String text) {
        try {
            return Documents.readScenario("scenario.json", text.getBytes(StandardCharsets.UTF_8));
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    private static List<LogEntry> log(String family, boolean done, String results) {
        String text = """
                { "weekwright": 1, "scenario": "club", "entries": [ { "group": "squad", "family": "%s", "start": "2027-02-09T10:00",
                  "minutes": 60, "done": %s, "people": [ { "athlete": "a1", "results": [ %s ] } ] } ] }
                """.formatted(family, done, results);
        try {
            return Documents.readLog("log.json", text.getBytes(StandardCharsets.UTF_8), scenario())
                    .entries();
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    private static Improvements found(String family, Timing timing, String results) {
        return Improvements.of(scenario(), log(family, true, results), timing, RepMax.EPLEY);
    }

    private static String run(double metres, String seconds) {
        return "{ \"measure\": \"sprint\", \"metres\": " + metres + ", \"seconds\": [" + seconds + "] }";
    }

    private static String squat(double kg, int repetitions) {
        return "{ \"measure\": \"lift\", \"lift\": \"back-squat\", \"kg\": " + kg + ", \"repetitions\": " + repetitions
                + " }";
    }

    @Test
    void the_fastest_run_that_betters_the_mark_is_found_once() {
        Improvements found =
                found("acceleration", Timing.ELECTRONIC, run(30, "4.2, 4.08, 4.10") + "," + run(30, "4.09"));

        assertThat(found.better()).hasSize(1);
        Improvement one = found.better().get(0);
        assertThat(one.value()).isEqualTo(4.08);
        assertThat(one.valueBefore()).isEqualTo(4.12);
        assertThat(one.mark().start()).isEqualTo(SprintStart.STANDING);
        assertThat(one.mark().date()).hasToString("2027-02-09");
    }

    @Test
    void what_is_no_better_is_no_mark() {
        assertThat(found("acceleration", Timing.ELECTRONIC, run(30, "4.12")).better())
                .isEmpty();
        assertThat(found("heavy-lower-knee", null, squat(135, 4)).better())
                .as("153 kg against 154")
                .isEmpty();
    }

    /** Epley 1985: 140 × 3 is 154.0, 145 × 2 154.7. */
    @Test
    void lifts_are_held_against_the_maximum_that_they_stand_for() {
        Improvement one =
                found("heavy-lower-knee", null, squat(145, 2)).better().get(0);

        assertThat(one.value()).isCloseTo(154.667, within(0.0005));
        assertThat(one.valueBefore()).isCloseTo(154.0, within(0.0005));
    }

    @Test
    void a_hand_time_never_betters_an_electronic_mark() {
        Improvement one =
                found("acceleration", Timing.HAND, run(30, "4.00")).better().get(0);

        assertThat(one.before()).as("a mark of another kind").isNull();
        assertThat(one.mark().timing()).isEqualTo(Timing.HAND);
    }

    @Test
    void where_nobody_says_how_runs_were_timed_none_is_used() {
        Improvements found = found("acceleration", null, run(30, "4.00"));

        assertThat(found.better()).isEmpty();
        assertThat(found.unused())
                .containsExactly("R. Ash: 30 m in 4 s is not used: say how runs were timed with --timing");
    }

    @Test
    void where_nobody_knows_how_a_run_began_it_is_not_used() {
        assertThat(found("small-sided-games", Timing.ELECTRONIC, run(20, "2.9")).unused())
                .containsExactly(
                        "R. Ash: 20 m in 2.9 s is not used: how the run began is not known; write it as a mark by"
                                + " hand");
        assertThat(found("small-sided-games", Timing.ELECTRONIC, run(30, "4.05"))
                        .better())
                .as("the only mark over 30 m is from a standing start")
                .hasSize(1);
    }

    @Test
    void the_impossible_is_refused_in_words() {
        assertThat(found("acceleration", Timing.ELECTRONIC, run(30, "2.0")).unused())
                .containsExactly("R. Ash: 30 m in 2 s is faster than anybody has run: not used, check it");
        assertThat(found("heavy-lower-knee", null, squat(100, 40)).unused())
                .containsExactly(
                        "R. Ash: back-squat 100 kg × 40: a maximum is estimated from 10 repetitions at most: not"
                                + " used, test with a heavier weight");
    }

    @Test
    void what_was_missed_betters_nothing() {
        assertThat(Improvements.of(
                                scenario(),
                                log("acceleration", false, run(30, "4.00")),
                                Timing.ELECTRONIC,
                                RepMax.EPLEY)
                        .better())
                .isEmpty();
    }

    @Test
    void only_taking_them_changes_the_scenario() {
        Scenario before = scenario();
        Improvements found = found("acceleration", Timing.ELECTRONIC, run(30, "4.08"));

        List<Mark> marks = found.taken(before).athletes().get(0).marks();

        assertThat(marks).hasSize(3).startsWith(before.athletes().get(0).marks().toArray(Mark[]::new));
        assertThat(marks.get(2).seconds()).isEqualTo(4.08);
        assertThat(read(Documents.write(found.taken(before)))).isEqualTo(found.taken(before));
    }

    private static Improvements ofTwo(String entries) {
        Scenario two = read("""
                { "weekwright": 1, "id": "club", "zone": "Europe/Dublin", "firstDay": "2027-02-08", "days": 7,
                  "groups": [ { "id": "squad", "aims": [] } ],
                  "athletes": [
                    { "id": "a1", "name": "R. Ash", "groups": ["squad"], "marks": [
                      { "measure": "sprint", "metres": 30, "seconds": 3.95, "start": "standing", "timing": "electronic", "date": "2026-08-01" } ] },
                    { "id": "a2", "name": "T. Birch", "groups": ["squad"] } ] }
                """);
        String log = "{ \"weekwright\": 1, \"scenario\": \"club\", \"entries\": [ " + entries + " ] }";
        try {
            return Improvements.of(
                    two,
                    Documents.readLog("log.json", log.getBytes(StandardCharsets.UTF_8), two)
                            .entries(),
                    Timing.ELECTRONIC,
                    RepMax.EPLEY);
        } catch (DocumentException e) {
            throw new AssertionError(e);
        }
    }

    private static String entry(String day, String athlete, String results) {
        return "{ \"group\": \"squad\", \"family\": \"acceleration\", \"start\": \"" + day
                + "T10:00\", \"minutes\": 60,"
                + " \"done\": true, \"people\": [ { \"athlete\": \"" + athlete + "\", \"results\": [ " + results
                + " ] } ] }";
    }

    @Test
    void each_is_credited_with_their_own_runs_in_the_order_of_the_squad() {
        Improvements found =
                ofTwo(entry("2027-02-09", "a2", run(30, "4.3")) + "," + entry("2027-02-10", "a1", run(30, "4.1")));

        assertThat(found.better()).extracting(one -> one.athlete().name()).containsExactly("R. Ash", "T. Birch");
        assertThat(found.better()).extracting(Improvement::value).containsExactly(4.1, 4.3);
    }

    @Test
    void a_mark_older_than_180_days_is_not_held_against_a_run() {
        Improvement one =
                ofTwo(entry("2027-02-09", "a1", run(30, "4.1"))).better().get(0);

        assertThat(one.before()).as("3.95 s, 192 days ago").isNull();
    }

    @Test
    void each_distance_is_a_mark_of_its_own_and_of_two_equal_runs_the_first_is_it() {
        Improvements found = ofTwo(entry("2027-02-09", "a2", run(20, "3.0") + "," + run(30, "4.3")) + ","
                + entry("2027-02-11", "a2", run(30, "4.3")));

        assertThat(found.better()).extracting(one -> one.mark().metres()).containsExactlyInAnyOrder(20.0, 30.0);
        assertThat(found.better())
                .extracting(one -> one.mark().date().toString())
                .containsOnly("2027-02-09");
    }
}
