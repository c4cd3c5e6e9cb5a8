package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.recalculation.Recalculation.Result;
import weekwright.engine.recalculation.Recalculation.RuleSum;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.PerWeek;
import weekwright.model.scenario.PersonEntry;
import weekwright.model.scenario.Prefer;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.RuleSetting;
import weekwright.model.scenario.Share;

/** What is asked for, and what is wished for. Expert proposals, unless said otherwise. */
class AimsAndWishesTest {
    private static Map<String, RuleSum> judged(Sketch sketch) {
        return sketch.judged().rules();
    }

    /** Two owed, three wanted, one placed: one key missing; of the third 16. */
    @Test
    void keyBeforeTarget() {
        Sketch sketch =
                new Sketch().aim("technique", 2, 3, 4, Priority.KEY).place("technique", "2027-03-02T10:00", null);
        assertThat(sketch.judged())
                .isEqualTo(new Result(
                        0, 10, 0, 160, Map.of("aim-least", new RuleSum(1, 10), "aim-target", new RuleSum(1, 160))));
    }

    /** A spare aim costs 4 for each missing session, owed or wanted. */
    @Test
    void spareIsOnlyWanted() {
        assertThat(judged(new Sketch().aim("technique", 1, 2, 3, Priority.SPARE)))
                .isEqualTo(Map.of("aim-target", new RuleSum(1, 80)));
    }

    /** A practice that is fixed counts for the aim; with one placed besides there is one more than allowed. */
    @Test
    void commitmentsCount() {
        Sketch sketch =
                new Sketch().aim("team-practice", 1, 1, 1, Priority.MAIN).practice("2027-03-02T10:00", 85, null);
        assertThat(judged(sketch)).isEmpty();
        sketch.place("team-practice", "2027-03-04T10:00", "turf");
        assertThat(judged(sketch)).isEqualTo(Map.of("aim-most", new RuleSum(1, 10)));
    }

    /** A micro dose does not count for the least, but for the target; half of the 12 points are its dose. */
    @Test
    void aMicroDoseIsNotTheLeast() {
        Sketch sketch = new Sketch()
                .aim("technique", 1, 1, 2, Priority.MAIN, Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .place("technique", "2027-03-02T10:00", null, Dose.MICRO);
        assertThat(sketch.judged())
                .isEqualTo(new Result(
                        0, 0, 10, 60, Map.of("aim-least", new RuleSum(1, 10), "dose-kept", new RuleSum(1, 60))));
    }

    /** The dose is waived between fixtures four days apart, and measured from the fullest that the aim allows. */
    @Test
    void theDoseIsWaivedBetweenCloseFixtures() {
        Sketch sketch = new Sketch()
                .aim("technique", 0, 0, 2, Priority.MAIN, Dose.REDUCED, Dose.MICRO)
                .place("technique", "2027-03-03T10:00", null, Dose.MICRO)
                .match("first", "2027-03-01T15:00", 105);
        assertThat(judged(sketch)).contains(entry("dose-kept", new RuleSum(1, 30)));
        assertThat(judged(sketch.match("second", "2027-03-05T15:00", 105))).doesNotContainKey("dose-kept");
    }

    /** Only those who did not play carry the session for them: 2 of 10, so the middle day costs 2. */
    @Test
    void aSessionForThoseWhoDidNotPlay() {
        Sketch sketch = new Sketch()
                .athlete("ash")
                .athlete("elm")
                .aim("small-sided-games", Share.NOT_PLAYED, new PerWeek(0, 0, 1), Priority.MAIN, false, null)
                .match("cup", "2027-03-01T15:00", 105, new Appearance("ash", 0), new Appearance("elm", 0))
                .place("small-sided-games", "2027-03-03T15:00", "turf");
        assertThat(judged(sketch)).contains(entry("no-middle-day", new RuleSum(1, 20)));
        assertThat(sketch.asCase().placements().get(0).key())
                .isEqualTo("squad/small-sided-games+not-played/2027-03-01/1");
    }

    /** Lifting (4) before speed (1): 8; a skill being learnt (0) after the lift: 16, before it nothing. */
    @Test
    void freshestFirst() {
        Sketch wrong = new Sketch()
                .place("heavy-lower-knee", "2027-03-02T10:00", "gym")
                .place("acceleration", "2027-03-02T11:00", "turf");
        assertThat(judged(wrong)).isEqualTo(Map.of("freshest-first", new RuleSum(1, 80)));
        Sketch learning = new Sketch()
                .aim("technique", Share.ALL, new PerWeek(0, 0, 2), Priority.MAIN, true, null)
                .place("heavy-lower-knee", "2027-03-02T10:00", "gym")
                .place("technique", "2027-03-02T11:00", null);
        // And it comes once where twice a week is the least: 10.
        assertThat(judged(learning))
                .isEqualTo(Map.of("freshest-first", new RuleSum(1, 160), "learner-frequency", new RuleSum(1, 100)));
    }

    /** Outside the preferred hours by five minutes 2, in another place 2. */
    @Test
    void preferences() {
        Sketch sketch = new Sketch()
                .aim(
                        "technique",
                        Share.ALL,
                        new PerWeek(0, 0, 2),
                        Priority.MAIN,
                        false,
                        new Prefer(List.of("turf"), ClockTime.parse("10:00"), ClockTime.parse("11:00")))
                .place("technique", "2027-03-01T10:30", "turf")
                .place("technique", "2027-03-04T10:35", null);
        assertThat(judged(sketch))
                .isEqualTo(Map.of("preferred-time", new RuleSum(1, 20), "preferred-facility", new RuleSum(1, 20)));
    }

    private static Sketch speedGroup(int days) {
        Sketch sketch = new Sketch().aim("max-velocity", 0, 0, 1, Priority.SPARE);
        sketch.days = days;
        return sketch;
    }

    /**
     * Two weeks (Malone et al. 2017, J Sci Med Sport 20:250-254, weekly exposures). Without any history the line starts
     * on the first day: 13 days to the last, 6 beyond, 36. Speed on the 9th: 8 days, 1 beyond, 6; then 5 days.
     */
    @Test
    void topSpeedEverySevenDays() {
        assertThat(judged(speedGroup(14))).isEqualTo(Map.of("speed-exposure", new RuleSum(1, 360)));
        assertThat(judged(speedGroup(14).place("max-velocity", "2027-03-09T10:00", "turf")))
                .isEqualTo(Map.of("speed-exposure", new RuleSum(1, 60)));
    }

    /** A match counts only where it was measured: 95 % on Sunday the 28th, so 7 days to the end are clean for one of ten. */
    @Test
    void aMeasuredMatchIsAnExposure() {
        Sketch sketch = speedGroup(7).athlete("ash").done("max-velocity", "2027-02-25T10:00", 65);
        // From Thursday the 25th to Sunday the 7th are 10 days, 3 beyond: 18 for all ten.
        assertThat(judged(sketch)).isEqualTo(Map.of("speed-exposure", new RuleSum(1, 180)));
        sketch.done("fixture", "2027-02-28T15:00", 105, measured("ash", 0.95));
        // Nine of ten are left: 16.2.
        assertThat(judged(sketch)).isEqualTo(Map.of("speed-exposure", new RuleSum(1, 162)));
    }

    private static PersonEntry measured(String athlete, double share) {
        return new PersonEntry(athlete, null, null, List.of(), share, null, null);
    }

    /** A draft's changed session costs 2; a published one's other day 24, other hour 8, other place 3, twice that soon. */
    @Test
    void stayingClose() {
        Plan before = new Sketch().place("technique", "2027-03-02T10:00", null).plan();
        Plan published =
                new Sketch().place("technique", "2027-03-02T10:00", null).plan("2027-03-01T08:00");
        Sketch sameDay = new Sketch().place("technique", "2027-03-02T12:00", null);
        Sketch otherDay = new Sketch().place("technique", "2027-03-03T10:00", null);
        Sketch otherPlace = new Sketch().place("technique", "2027-03-02T10:00", "turf");
        assertKept(sameDay, before, null, 20);
        assertKept(sameDay, published, null, 80);
        assertKept(otherDay, published, null, 240);
        assertKept(otherPlace, published, null, 30);
        assertKept(new Sketch(), published, null, 240);
        assertKept(otherDay, published, "2027-02-28T10:00", 480);
        assertKept(otherDay, published, "2027-02-28T09:00", 240);
    }

    private static void assertKept(Sketch sketch, Plan before, String now, long cost) {
        assertThat(sketch.judgedBeside(before, now).rules()).isEqualTo(Map.of("keep-plan", new RuleSum(1, cost)));
    }

    /** A must made a want costs 24, a want made a must counts one, weights multiply, told and off cost nothing. */
    @Test
    void changedRules() {
        assertThat(middleDay(new RuleSetting(RuleLevel.MUST, null, Map.of())).judged())
                .isEqualTo(new Result(10, 0, 0, 0, Map.of("no-middle-day", new RuleSum(1, 10))));
        assertThat(middleDay(new RuleSetting(null, 0.25, Map.of())).judged().want())
                .isEqualTo(25);
        assertThat(middleDay(new RuleSetting(RuleLevel.TOLD, null, Map.of()))
                        .judged()
                        .rules())
                .isEmpty();
        Sketch wrongPlace = new Sketch().place("heavy-upper-push", "2027-03-02T10:00", "turf");
        wrongPlace.rules.put("facility-fits", new RuleSetting(RuleLevel.WANT, null, Map.of()));
        assertThat(wrongPlace.judged())
                .isEqualTo(new Result(0, 0, 0, 240, Map.of("facility-fits", new RuleSum(1, 240))));
    }

    private static Sketch middleDay(RuleSetting setting) {
        Sketch sketch = new Sketch().place("small-sided-games", "2027-03-02T10:00", "turf");
        sketch.rules.put("no-middle-day", setting);
        return sketch;
    }
}
