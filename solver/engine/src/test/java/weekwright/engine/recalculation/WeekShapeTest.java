package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.recalculation.Recalculation.RuleSum;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Restriction;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Travel;

/** High, middle and free days. Expert proposals, unless said otherwise. */
class WeekShapeTest {
    private static final RuleSum ONE_MUST = new RuleSum(1, 10);

    private static Map<String, RuleSum> judged(Sketch sketch) {
        return sketch.judged().rules();
    }

    private static Sketch highDays(String... dates) {
        Sketch sketch = new Sketch();
        for (String date : dates) {
            sketch.place("lower-hypertrophy", date + "T10:00", "gym");
        }
        return sketch;
    }

    /** Four high days running are two runs of three (24 each) and one of four. */
    @Test
    void highDaysRunning() {
        assertThat(judged(highDays("2027-03-01", "2027-03-02", "2027-03-04")))
                .doesNotContainKeys("three-high-days", "four-high-days");
        assertThat(judged(highDays("2027-03-01", "2027-03-02", "2027-03-03")))
                .doesNotContainKey("four-high-days")
                .contains(entry("three-high-days", new RuleSum(1, 240)));
        assertThat(judged(highDays("2027-03-01", "2027-03-02", "2027-03-03", "2027-03-04")))
                .contains(entry("three-high-days", new RuleSum(2, 480)), entry("four-high-days", ONE_MUST));
    }

    /** Two hard days done before the week, and one placed on its first day, make a run of three. */
    @Test
    void runsReachBackIntoTheHistory() {
        Sketch sketch = highDays("2027-03-01")
                .done("lower-hypertrophy", "2027-02-27T10:00", 60)
                .done("lower-hypertrophy", "2027-02-28T10:00", 60);
        assertThat(judged(sketch)).contains(entry("three-high-days", new RuleSum(1, 240)));
    }

    /** Three hard practices running that nobody here placed are only told. */
    @Test
    void fixedHighDaysAreTold() {
        Sketch sketch = new Sketch()
                .practice("2027-03-01T10:00", 85, Effort.HARD)
                .practice("2027-03-02T10:00", 85, Effort.HARD)
                .practice("2027-03-03T10:00", 85, Effort.HARD);
        sketch.highDays = new PerWeek(0, 2, 2);
        assertThat(judged(sketch)).isEmpty();
    }

    /** Two wanted, four placed, three allowed: a must, and 24 for each of two too many. */
    @Test
    void highDaysAgainstTheirNumbers() {
        Sketch tooMany = highDays("2027-03-01", "2027-03-03", "2027-03-05", "2027-03-07");
        tooMany.highDays = new PerWeek(1, 2, 3);
        assertThat(judged(tooMany))
                .contains(entry("high-days-most", ONE_MUST), entry("high-days-target", new RuleSum(1, 480)));
        Sketch none = new Sketch();
        none.highDays = new PerWeek(1, 2, 3);
        assertThat(none.judged())
                .isEqualTo(new Recalculation.Result(
                        0, 10, 0, 240, Map.of("high-days-least", ONE_MUST, "high-days-target", new RuleSum(1, 240))));
    }

    /** Of a four-day last week 4/7 are asked: least 2 becomes 1, target 3 becomes 2 (1.7), most 3 becomes 2. */
    @Test
    void aShortLastWeekAsksForItsShare() {
        Sketch sketch = highDays("2027-03-01");
        sketch.days = 4;
        sketch.highDays = new PerWeek(2, 3, 3);
        assertThat(judged(sketch)).isEqualTo(Map.of("high-days-target", new RuleSum(1, 120)));
    }

    /** Somebody under a clinician's limit in the week is not asked for high days: 12 x 9/10. */
    @Test
    void whoIsRestrictedOwesNoHighDays() {
        Sketch sketch = new Sketch()
                .athlete(
                        "ash",
                        new Restriction(
                                List.of(Pathway.AEROBIC),
                                RestrictionLimit.NONE,
                                LocalDate.parse("2027-03-07"),
                                LocalDate.parse("2027-03-09"),
                                null));
        sketch.highDays = new PerWeek(0, 1, 3);
        assertThat(judged(sketch)).isEqualTo(Map.of("high-days-target", new RuleSum(1, 108)));
    }

    /** Small-sided games alone are 6.0, a middle day: 10, twice off season; the day before a match is not judged. */
    @Test
    void noMiddleDay() {
        Sketch games = new Sketch().place("small-sided-games", "2027-03-02T10:00", "turf");
        assertThat(judged(games)).isEqualTo(Map.of("no-middle-day", new RuleSum(1, 100)));
        games.phase = Phase.OFF_SEASON;
        assertThat(judged(games)).isEqualTo(Map.of("no-middle-day", new RuleSum(1, 200)));
        games.match("cup", "2027-03-04T15:00", 105);
        assertThat(judged(games)).doesNotContainKey("no-middle-day");
    }

    private static Sketch sixDaysOfTechnique() {
        Sketch sketch = new Sketch();
        for (int day = 1; day <= 6; day++) {
            sketch.place("technique", "2027-03-0" + day + "T10:00", null);
        }
        return sketch;
    }

    /** One day of seven stays free; mobility does not spoil it, a seventh session or a long journey does. */
    @Test
    void aFreeDayInTheWeek() {
        assertThat(judged(sixDaysOfTechnique().place("mobility", "2027-03-07T10:00", null)))
                .isEmpty();
        assertThat(judged(sixDaysOfTechnique().place("technique", "2027-03-07T10:00", null)))
                .isEqualTo(Map.of("free-day", ONE_MUST, "six-days-running", new RuleSum(1, 120)));
        // The coach leaves on Sunday 21:35 for a match on Monday after the week: 3 h of road, 25 min of warm-up.
        assertThat(judged(sixDaysOfTechnique()
                        .match("away", "fixture", "2027-03-08T01:00", 105, FixtureWeight.REGULAR, new Travel(180, 0))))
                .contains(entry("free-day", ONE_MUST));
    }

    /** A match on Monday: Wednesday free costs nothing, only Tuesday free 4, neither 12. */
    @Test
    void theFreeDayAfterAMatch() {
        assertThat(judged(afterMonday("2027-03-02"))).doesNotContainKey("free-day-place");
        assertThat(judged(afterMonday("2027-03-03"))).contains(entry("free-day-place", new RuleSum(1, 40)));
        assertThat(judged(afterMonday("2027-03-02", "2027-03-03")))
                .contains(entry("free-day-place", new RuleSum(1, 120)));
    }

    private static Sketch afterMonday(String... dates) {
        Sketch sketch = new Sketch().match("cup", "2027-03-01T15:00", 105);
        for (String date : dates) {
            sketch.place("technique", date + "T10:00", null);
        }
        return sketch;
    }

    /** Small-sided games the day before a match: 24; the same before a minor one: nothing. */
    @Test
    void theDayBeforeAMatchIsLight() {
        assertThat(judged(dayBefore("small-sided-games", FixtureWeight.REGULAR)))
                .contains(entry("day-before-light", new RuleSum(1, 240)));
        assertThat(judged(dayBefore("small-sided-games", FixtureWeight.MINOR))).doesNotContainKey("day-before-light");
        assertThat(judged(dayBefore("tempo-run", FixtureWeight.REGULAR))).doesNotContainKey("day-before-light");
    }

    private static Sketch dayBefore(String family, FixtureWeight weight) {
        return new Sketch()
                .match("cup", "fixture", "2027-03-04T15:00", 105, weight, Travel.NONE)
                .place(family, "2027-03-03T10:00", "turf");
    }
}
