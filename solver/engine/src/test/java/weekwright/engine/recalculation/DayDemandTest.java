package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import weekwright.model.scenario.Appearance;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.GroupKind;

/** Demand and load of single days. All figures are expert proposals; the sums are worked by hand. */
class DayDemandTest {
    private static final String TUESDAY = "2027-03-02T";

    private static Day tuesday(Sketch sketch) {
        Case the = sketch.asCase();
        return Day.of(the, the.people().get(0), LocalDate.parse("2027-03-02"));
    }

    private static void assertDemand(Sketch sketch, long hundredths) {
        assertThat(tuesday(sketch).demand().times(100).roundedHalfUp()).isEqualTo(hundredths);
    }

    /** max(2, 3, 5 - 2) = 3, and 0.15 x 2. */
    @Test
    void tempoAndTrunk() {
        assertDemand(
                new Sketch()
                        .place("tempo-run", TUESDAY + "10:00", "turf")
                        .place("trunk-and-balance", TUESDAY + "10:40", null),
                330);
    }

    @Test
    void teamPracticeAlone() {
        assertDemand(new Sketch().practice(TUESDAY + "10:00", 85, null), 400);
    }

    /** Load 5 x (25 + 15) + 5 x (85 - 15 + 5) = 575, over 110 = 5.23; more than 4.5 + 0.15 x 4 = 5.1. */
    @Test
    void microSpeedAndPracticeInOneVisit() {
        Sketch sketch = new Sketch()
                .place("max-velocity", TUESDAY + "10:00", "turf", Dose.MICRO)
                .practice(TUESDAY + "10:45", 85, null);
        assertThat(tuesday(sketch).load()).isEqualTo(Fraction.of(575));
        assertDemand(sketch, 523);
    }

    /** Load 4 x 30 + 5 x 85 = 545, over 110 = 4.95. */
    @Test
    void primerAndPracticeInTwoVisits() {
        Sketch sketch = new Sketch().place("primer", TUESDAY + "10:00", "turf").practice(TUESDAY + "15:00", 85, null);
        assertThat(tuesday(sketch).load()).isEqualTo(Fraction.of(545));
        assertDemand(sketch, 495);
    }

    @Test
    void smallSidedGamesAlone() {
        assertDemand(new Sketch().place("small-sided-games", TUESDAY + "10:00", "turf"), 600);
    }

    /** 8 x 0.95. */
    @Test
    void heavyLowerReduced() {
        assertDemand(new Sketch().place("heavy-lower-knee", TUESDAY + "10:00", "gym", Dose.REDUCED), 760);
    }

    @Test
    void lowerHypertrophy() {
        assertDemand(new Sketch().place("lower-hypertrophy", TUESDAY + "10:00", "gym"), 800);
    }

    /** Load 2 x 425 = 850, over 110 = 7.73. */
    @Test
    void twoPracticesInTwoVisits() {
        assertDemand(new Sketch().practice(TUESDAY + "10:00", 85, null).practice(TUESDAY + "16:00", 85, null), 773);
    }

    /** 8 + 0.15 x 8 = 9.2. */
    @Test
    void heavyLowerAndLowerHypertrophy() {
        assertDemand(
                new Sketch()
                        .place("heavy-lower-knee", TUESDAY + "10:00", "gym")
                        .place("lower-hypertrophy", TUESDAY + "11:00", "gym"),
                920);
    }

    /** 6 x 0.6 for footballers, 6 for lifters. */
    @Test
    void upperBodyWeighsLessSaveForLifters() {
        Sketch footballers = new Sketch().place("upper-strength", TUESDAY + "10:00", "gym");
        assertDemand(footballers, 360);
        footballers.kind = GroupKind.STRENGTH;
        assertDemand(footballers, 600);
    }

    /** Effort hard: neural and tissue 7, rating 7; load 7 x 85 = 595, over 110 = 5.41, so 7 holds. */
    @Test
    void hardPracticeIsAHighDay() {
        Sketch sketch = new Sketch().practice(TUESDAY + "10:00", 85, Effort.HARD);
        assertDemand(sketch, 700);
        assertThat(tuesday(sketch).isHigh()).isTrue();
    }

    /** 9 x 1, 0.8, 0.5, 0; loads 8 x 115 x 90/90, 60/90, 29/90, 0. */
    @Test
    void fixtureByMinutesPlayed() {
        assertMinutes(90, "9", "920");
        assertMinutes(61, "9", "5612/9");
        assertMinutes(60, "36/5", "1840/3");
        assertMinutes(30, "36/5", "920/3");
        assertMinutes(29, "9/2", "2668/9");
        assertMinutes(0, "0", "0");
    }

    private static void assertMinutes(int minutes, String demand, String load) {
        Sketch sketch =
                new Sketch().athlete("ash").match("cup", TUESDAY + "19:00", 105, new Appearance("ash", minutes));
        Day day = tuesday(sketch);
        assertThat(day.person().name()).isEqualTo("ash");
        assertThat(day.the().demand(day.person(), day.things().get(0))).hasToString(demand);
        assertThat(day.load()).hasToString(load);
    }

    /**
     * Three sessions in one visit: sprint 65 min, then jumps 45 - 20 + 5 = 30 min, then the day's first lift 60 - 15 +
     * 10 = 55 min: 5 x 65 + 6 x 30 + 7 x 55 = 890.
     */
    @Test
    void warmUpsAreSharedWithinAVisit() {
        Sketch sketch = new Sketch()
                .place("max-velocity", TUESDAY + "10:00", "turf")
                .place("intensive-plyometrics", TUESDAY + "11:10", "turf")
                .place("heavy-lower-knee", TUESDAY + "12:10", "gym");
        assertThat(tuesday(sketch).load()).isEqualTo(Fraction.of(890));
    }

    /** A gap of 15 minutes shares the warm-up, one of 16 does not: 325 + 5 x 75 = 700 or 325 + 5 x 85 = 750. */
    @Test
    void warmUpsAreSharedUpToAQuarterOfAnHour() {
        Sketch near =
                new Sketch().place("max-velocity", TUESDAY + "10:00", "turf").practice(TUESDAY + "11:20", 85, null);
        Sketch far =
                new Sketch().place("max-velocity", TUESDAY + "10:00", "turf").practice(TUESDAY + "11:21", 85, null);
        assertThat(tuesday(near).load()).isEqualTo(Fraction.of(700));
        assertThat(tuesday(far).load()).isEqualTo(Fraction.of(750));
    }

    /** Main minutes 40 x 2/3 = 26.7 become 30, 40 x 1/3 = 13.3 become 15, never under 10. */
    @Test
    void smallerDosesRoundUpToFiveMinutes() {
        assertMinutesOf("max-velocity", Dose.REDUCED, 55);
        assertMinutesOf("max-velocity", Dose.MICRO, 40);
        assertMinutesOf("hamstring-eccentric", Dose.MICRO, 20);
    }

    private static void assertMinutesOf(String family, Dose dose, int minutes) {
        Case the = new Sketch().place(family, TUESDAY + "10:00", "turf", dose).asCase();
        assertThat(the.placements().get(0).minutes()).isEqualTo(minutes);
    }
}
