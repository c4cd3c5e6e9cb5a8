package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.recalculation.Recalculation.RuleSum;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Travel;

/**
 * Hours between hard things. Maximal velocity: at least 40 h, 72 wanted (Haugen et al. 2019, Sports Med Open 5:44; Thomas
 * et al. 2018, MSSE 50:2526-2535; hard minima 8 h under the nominal hours and the 4 h tolerance are expert proposals).
 */
class HoursTest {
    private static final int CLEAN = 0;

    /** Maximal velocity that ends Tuesday 18:00 (65 minutes from 16:55), and again. */
    private static Map<String, RuleSum> speedAgain(String start) {
        return new Sketch()
                .place("max-velocity", "2027-03-02T16:55", "turf")
                .place("max-velocity", start, "turf")
                .judged()
                .rules();
    }

    private static long cost(Map<String, RuleSum> rules, String rule) {
        return rules.getOrDefault(rule, new RuleSum(0, CLEAN)).cost();
    }

    /** 39 h: under 40, a must; 68 counted - 39 = 29 short, 12 + 2 x 17 = 46 points. */
    @Test
    void thirtyNineHoursBreakTheFloor() {
        assertThat(speedAgain("2027-03-04T09:00"))
                .contains(entry("pathway-gap-floor", new RuleSum(1, 10)), entry("pathway-gap", new RuleSum(1, 460)));
    }

    /** 40 h: allowed, at the edge; 28 short of the 68 counted, 12 + 2 x 16 = 44 points. */
    @Test
    void fortyHoursAreAllowed() {
        assertThat(speedAgain("2027-03-04T10:00"))
                .doesNotContainKey("pathway-gap-floor")
                .contains(entry("pathway-gap", new RuleSum(1, 440)));
    }

    /** 72 h are clean, and so are 68; 67 h 50 min are a sixth of an hour short: 0.2. */
    @Test
    void seventyTwoHoursAreClean() {
        assertThat(cost(speedAgain("2027-03-05T18:00"), "pathway-gap")).isEqualTo(CLEAN);
        assertThat(cost(speedAgain("2027-03-05T14:00"), "pathway-gap")).isEqualTo(CLEAN);
        assertThat(cost(speedAgain("2027-03-05T13:50"), "pathway-gap")).isEqualTo(2);
    }

    /**
     * Europe/Paris puts the clock back in the night to 2026-10-25: Saturday 18:00 to Sunday 18:00 is 25 h elapsed, 43
     * short of 68: 12 + 2 x 31 = 74 points. A week later it is 24 h: 76.
     */
    @Test
    void theNightOfTheClockChangeHasAnHourMore() {
        assertThat(overnightInParis("2026-10-24", "2026-10-25").get("pathway-gap"))
                .isEqualTo(new RuleSum(1, 740));
        assertThat(overnightInParis("2026-10-31", "2026-11-01").get("pathway-gap"))
                .isEqualTo(new RuleSum(1, 760));
    }

    private static Map<String, RuleSum> overnightInParis(String saturday, String sunday) {
        Sketch sketch = new Sketch();
        sketch.zone = "Europe/Paris";
        sketch.firstDay = LocalDate.parse("2026-10-19");
        sketch.days = 14;
        return sketch.place("max-velocity", saturday + "T16:55", "turf")
                .place("max-velocity", sunday + "T18:00", "turf")
                .judged()
                .rules();
    }

    /** The earlier dose counts: after a micro dose 24 h are enough (40 x 0.6), and 72 x 0.6 - 4 = 39.2 are clean. */
    @Test
    void aMicroDoseNeedsSixTenthsOfTheHours() {
        // Ends Tuesday 17:35 (40 minutes from 16:55); Wednesday 17:35 is 24 h later: 15.2 short, 12 + 2 x 3.2 = 18.4.
        Map<String, RuleSum> rules = new Sketch()
                .place("max-velocity", "2027-03-02T16:55", "turf", Dose.MICRO)
                .place("max-velocity", "2027-03-03T17:35", "turf")
                .judged()
                .rules();
        assertThat(rules).doesNotContainKey("pathway-gap-floor");
        assertThat(cost(rules, "pathway-gap")).isEqualTo(184);
    }

    /** Sprinters repeat maximal speed after 48 h: 44 counted, so the same hour two days on (46 h 55 min) is clean. */
    @Test
    void sprintersRepeatSpeedEveryOtherDay() {
        Sketch sketch = new Sketch()
                .place("max-velocity", "2027-03-01T10:00", "turf")
                .place("max-velocity", "2027-03-03T10:00", "turf")
                .place("max-velocity", "2027-03-05T10:00", "turf");
        sketch.kind = GroupKind.SPRINT;
        assertThat(sketch.judged().rules()).doesNotContainKeys("pathway-gap", "pathway-gap-floor", "high-block-gap");
    }

    /** One family never comes twice a day. */
    @Test
    void theSameFamilyTwiceADayBreaksTheFloor() {
        Map<String, RuleSum> rules = new Sketch()
                .place("heavy-lower-knee", "2027-03-02T09:00", "gym")
                .place("heavy-lower-knee", "2027-03-02T17:00", "gym")
                .judged()
                .rules();
        assertThat(rules).contains(entry("pathway-gap-floor", new RuleSum(1, 10)));
    }

    /**
     * Lower-body hypertrophy on Tuesday, 10:00 to 11:00, asks 40 h before the next high block (speed shares no quality
     * with it); Wednesday 10:00 is 23 h later: a must, and 44 counted - 23 = 21 short in a week without fixture, 12 + 2
     * x 9 = 30.
     */
    @Test
    void fromHighBlockToHighBlock() {
        Map<String, RuleSum> rules = new Sketch()
                .place("lower-hypertrophy", "2027-03-02T10:00", "gym")
                .place("acceleration", "2027-03-03T10:00", "turf")
                .judged()
                .rules();
        assertThat(rules)
                .contains(entry("high-block-floor", new RuleSum(1, 10)), entry("high-block-gap", new RuleSum(1, 300)));
    }

    private static Sketch afterMatch(int minutesOfAsh, String family, Dose dose, String start) {
        Sketch sketch = new Sketch();
        sketch.headcount = 1;
        return sketch.athlete("ash")
                .match("cup", "2027-03-01T15:00", 105, new Appearance("ash", minutesOfAsh))
                .place(family, start, "turf", dose);
    }

    /**
     * After the final whistle Monday 16:45 (Silva et al. 2018; Rhodes et al. 2019; hours are expert proposals): maximal
     * velocity 64 h, so Thursday 08:45 is allowed and 08:40 is not; 68 are counted of 72, so 4 and 4.1 points.
     */
    @Test
    void maximalVelocityAfterAMatch() {
        assertThat(afterMatch(90, "max-velocity", Dose.FULL, "2027-03-04T08:45")
                        .judged()
                        .rules())
                .doesNotContainKey("after-fixture")
                .contains(entry("after-fixture-margin", new RuleSum(1, 40)));
        assertThat(afterMatch(90, "max-velocity", Dose.FULL, "2027-03-04T08:40")
                        .judged()
                        .rules())
                .contains(
                        entry("after-fixture", new RuleSum(1, 10)), entry("after-fixture-margin", new RuleSum(1, 41)));
    }

    /** 30 to 60 minutes: 16 h fewer (48), 24 h fewer wanted (48, 44 counted); Wednesday 16:45 is exactly 48 h. */
    @Test
    void halfAMatchNeedsFewerHours() {
        assertThat(afterMatch(45, "max-velocity", Dose.FULL, "2027-03-03T16:45")
                        .judged()
                        .rules())
                .doesNotContainKeys("after-fixture", "after-fixture-margin");
        assertThat(afterMatch(45, "max-velocity", Dose.FULL, "2027-03-03T16:40")
                        .judged()
                        .rules())
                .contains(entry("after-fixture", new RuleSum(1, 10)));
    }

    /** Under 30 minutes as an acceleration session: 16 h to another high quality, 40 to acceleration. */
    @Test
    void aShortAppearanceCountsAsAcceleration() {
        assertThat(afterMatch(20, "max-velocity", Dose.FULL, "2027-03-02T08:45")
                        .judged()
                        .rules())
                .doesNotContainKeys("after-fixture", "after-fixture-margin");
        assertThat(afterMatch(20, "acceleration", Dose.FULL, "2027-03-03T08:40")
                        .judged()
                        .rules())
                .contains(entry("after-fixture", new RuleSum(1, 10)));
    }

    /** A micro dose of speed 36 h after a match: 48 wanted, 44 counted, 8 short. */
    @Test
    void microSpeedAfterAMatch() {
        assertThat(afterMatch(90, "max-velocity", Dose.MICRO, "2027-03-03T04:45")
                        .judged()
                        .rules())
                .doesNotContainKey("after-fixture")
                .contains(entry("after-fixture-margin", new RuleSum(1, 80)));
    }

    private static Map<String, RuleSum> beforeMatch(FixtureWeight weight, String family, String start, Dose dose) {
        return new Sketch()
                .match("cup", "fixture", "2027-03-06T15:00", 105, weight, Travel.NONE)
                .place(family, start, "turf", dose)
                .judged()
                .rules();
    }

    /** Acceleration that ends Thursday 22:55, 40 h 5 min before: 68 - 40 1/12 = 27 11/12 short, 12 + 2 x 15 11/12 = 43.8. */
    @Test
    void beforeARegularKeyOrMinorMatch() {
        String late = "2027-03-04T22:00";
        assertThat(beforeMatch(FixtureWeight.REGULAR, "acceleration", late, Dose.FULL))
                .doesNotContainKey("before-fixture")
                .contains(entry("before-fixture-margin", new RuleSum(1, 438)));
        assertThat(beforeMatch(FixtureWeight.KEY, "acceleration", late, Dose.FULL))
                .contains(entry("before-fixture-margin", new RuleSum(1, 658)));
        assertThat(beforeMatch(FixtureWeight.MINOR, "acceleration", late, Dose.FULL))
                .contains(entry("before-fixture-margin", new RuleSum(1, 219)));
    }

    /** Heavy lower 63 h before breaks a must of 64, but not before a minor match; a micro dose is allowed from 36 h. */
    @Test
    void theMustBeforeAMatch() {
        String sixtyThreeBefore = "2027-03-03T23:00";
        assertThat(beforeMatch(FixtureWeight.REGULAR, "heavy-lower-knee", sixtyThreeBefore, Dose.FULL))
                .contains(entry("before-fixture", new RuleSum(1, 10)));
        assertThat(beforeMatch(FixtureWeight.MINOR, "heavy-lower-knee", sixtyThreeBefore, Dose.FULL))
                .doesNotContainKey("before-fixture");
        assertThat(beforeMatch(FixtureWeight.REGULAR, "heavy-lower-knee", sixtyThreeBefore, Dose.MICRO))
                .doesNotContainKey("before-fixture");
    }

    /** A primer ends three hours before: 12:00 is allowed, 12:05 is not. */
    @Test
    void aPrimerEndsInTime() {
        assertThat(beforeMatch(FixtureWeight.REGULAR, "primer", "2027-03-06T11:30", Dose.FULL))
                .doesNotContainKey("primer-end");
        assertThat(beforeMatch(FixtureWeight.REGULAR, "primer", "2027-03-06T11:35", Dose.FULL))
                .contains(entry("primer-end", new RuleSum(1, 10)));
    }

    /**
     * One athlete of the squad of 10 also runs with the 4 sprinters: speed with the squad on Tuesday (ends 18:00) and
     * with the sprinters on Wednesday 18:00, 24 h, touches him alone, and a quarter of the later group: 68 - 24 = 44
     * short, 12 + 2 x 32 = 76, over 4 = 19. Were the later session the squad's, it would be a tenth: 7.6.
     */
    @Test
    void aPairIsSharedByTheLaterGroup() {
        assertThat(inTwoGroups(Sketch.SQUAD, "sprinters").get("pathway-gap")).isEqualTo(new RuleSum(1, 190));
        assertThat(inTwoGroups("sprinters", Sketch.SQUAD).get("pathway-gap")).isEqualTo(new RuleSum(1, 76));
    }

    private static Map<String, RuleSum> inTwoGroups(String first, String second) {
        Sketch sketch = new Sketch();
        sketch.otherGroups.add(
                new Group("sprinters", null, GroupKind.FIELD, null, null, 4, 0, null, null, null, null, null, null));
        sketch.athletes.add(
                new Athlete("ash", null, List.of(Sketch.SQUAD, "sprinters"), null, null, null, null, null, null));
        return sketch.placeFor(first, "max-velocity", "2027-03-02T16:55", "turf")
                .placeFor(second, "max-velocity", "2027-03-03T18:00", "turf")
                .judged()
                .rules();
    }
}
