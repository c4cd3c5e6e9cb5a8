package weekwright.model.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;

/**
 * Demand, load and minutes. Figures: expert proposal, the check values agreed for the rules; load is session-RPE
 * (Foster et al. 2001, JSCR 15:109-115).
 */
class DemandsTest {
    private final Catalogue catalogue = Catalogue.builtIn();

    private int demandOf(String family, Dose dose) {
        return Demands.sessionDemand(catalogue.family(family), dose, false);
    }

    private int loadOf(String id, Dose dose) {
        Family family = catalogue.family(id);
        return Demands.loadTenths(family.rpe(), Demands.wholeMinutes(family, null, dose, 1));
    }

    private static String shown(int largest, int others, int loadTenths) {
        return String.format(Locale.ROOT, "%.1f", Demands.demand(largest, others, loadTenths));
    }

    @ParameterizedTest
    @CsvSource({
        "tempo-run,         FULL,    trunk-and-balance, FULL,  3.3",
        "primer,            FULL,    team-practice,     FULL,  5.0",
        "team-practice,     FULL,    team-practice,     FULL,  7.7",
        "heavy-lower-knee,  FULL,    lower-hypertrophy, FULL,  9.2"
    })
    void two_sessions_in_two_visits_ask_the_agreed_demand(
            String first, Dose firstDose, String second, Dose secondDose, String demand) {
        int one = demandOf(first, firstDose);
        int other = demandOf(second, secondDose);
        int load = loadOf(first, firstDose) + loadOf(second, secondDose);
        assertThat(shown(Math.max(one, other), Math.min(one, other), load)).isEqualTo(demand);
    }

    @ParameterizedTest
    @CsvSource({
        "team-practice,     FULL,    4.0",
        "small-sided-games, FULL,    6.0",
        "heavy-lower-knee,  REDUCED, 7.6",
        "lower-hypertrophy, FULL,    8.0"
    })
    void a_session_alone_asks_the_agreed_demand(String family, Dose dose, String demand) {
        assertThat(shown(demandOf(family, dose), 0, loadOf(family, dose))).isEqualTo(demand);
    }

    @Test
    void primer_and_practice_in_two_visits_carry_545_units() {
        assertThat(loadOf("primer", Dose.FULL) + loadOf("team-practice", Dose.FULL))
                .isEqualTo(5_450);
    }

    @Test
    void micro_speed_and_practice_in_one_visit_share_a_warm_up_and_stay_low() {
        Family practice = catalogue.family("team-practice");
        int practiceMinutes = practice.minutes() + Demands.sharedWarmUp(practice.warmUpMinutes(), false);
        int load = loadOf("max-velocity", Dose.MICRO) + Demands.loadTenths(practice.rpe(), practiceMinutes);
        int speed = demandOf("max-velocity", Dose.MICRO);
        int other = demandOf("team-practice", Dose.FULL);
        assertThat(load).isEqualTo(5_750);
        assertThat(shown(speed, other, load)).isEqualTo("5.2");
        assertThat(Demands.classOf(speed, other, load)).isEqualTo(DayClass.LOW);
    }

    @ParameterizedTest
    @CsvSource({
        "0,    0,    0,     FREE",
        "0,    0,    1,     LOW",
        "5500, 0,    0,     LOW",
        "5501, 0,    0,     MIDDLE",
        "6499, 0,    0,     MIDDLE",
        "6500, 0,    0,     HIGH",
        "5000, 3333, 0,     LOW",
        "5000, 3334, 0,     MIDDLE",
        "5600, 5999, 0,     MIDDLE",
        "5600, 6000, 0,     HIGH",
        "0,    0,    6050,  LOW",
        "0,    0,    6051,  MIDDLE",
        "0,    0,    7149,  MIDDLE",
        "0,    0,    7150,  HIGH"
    })
    void a_day_is_low_to_5_5_and_high_from_6_5_on_the_point(int largest, int others, int load, DayClass expected) {
        assertThat(Demands.classOf(largest, others, load)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "max-velocity,       FULL,    9000",
        "max-velocity,       REDUCED, 8550",
        "max-velocity,       MICRO,   4500",
        "aerobic-intervals,  FULL,    6000",
        "upper-strength,     FULL,    3600",
        "upper-strength,     REDUCED, 3420",
        "upper-strength,     MICRO,   1800",
        "primer,             FULL,    4000",
        "primer,             MICRO,   2000",
        "fixture,            FULL,    9000",
        "recovery,           FULL,    0"
    })
    void demand_of_a_session_is_exact(String family, Dose dose, int thousandths) {
        assertThat(demandOf(family, dose)).isEqualTo(thousandths);
    }

    @Test
    void upper_body_work_counts_in_full_in_a_strength_group() {
        Family upper = catalogue.family("upper-strength");
        assertThat(Demands.sessionDemand(upper, Dose.FULL, true)).isEqualTo(6_000);
        assertThat(Demands.classOf(upper, true)).isEqualTo(DayClass.MIDDLE);
        assertThat(Demands.classOf(upper, false)).isEqualTo(DayClass.LOW);
    }

    @ParameterizedTest
    @CsvSource({"HARD, 7000", "USUAL, 4000", "EASY, 3000"})
    void effort_stands_for_the_neural_and_tissue_demand_of_a_practice(Effort effort, int thousandths) {
        Family practice = catalogue.family("team-practice");
        assertThat(Demands.sessionDemand(practice, effort, Dose.FULL, false)).isEqualTo(thousandths);
    }

    @Test
    void metabolic_demand_counts_two_points_less_whatever_the_effort() {
        Family games = catalogue.family("small-sided-games");
        assertThat(Demands.sessionDemand(games, Effort.EASY, Dose.FULL, false)).isEqualTo(5_000);
    }

    @ParameterizedTest
    @CsvSource({"0, NONE, 0", "1, SHORT, 4500", "29, SHORT, 4500", "30, PART, 7200", "60, PART, 7200", "61, FULL, 9000"
    })
    void a_fixture_asks_by_the_minutes_played(int minutes, Played played, int thousandths) {
        assertThat(Played.of(minutes, 90)).isEqualTo(played);
        assertThat(Demands.fixtureDemand(played)).isEqualTo(thousandths);
    }

    // A sprint meet of 60 minutes, an under-15 match of 50: nobody can play more of them.
    @ParameterizedTest
    @CsvSource({"60, 60, FULL", "59, 60, PART", "50, 50, FULL", "20, 20, FULL", "0, 50, NONE"})
    void all_of_a_short_fixture_is_all(int minutes, int playMinutes, Played played) {
        assertThat(Played.of(minutes, playMinutes)).isEqualTo(played);
    }

    @ParameterizedTest
    @CsvSource({
        "max-velocity,     ,   FULL,    1.0,  65",
        "max-velocity,     ,   REDUCED, 1.0,  55",
        "max-velocity,     ,   MICRO,   1.0,  40",
        "max-velocity,     30, MICRO,   1.0,  35",
        "max-velocity,     50, FULL,    1.1,  80",
        "max-velocity,     50, FULL,    1.101, 85",
        "max-velocity,     40, FULL,    0.7,  55",
        "contact-practice, ,   MICRO,   1.0,  30",
        "warm-up,          ,   FULL,    1.0,  20",
        "warm-up,          20, FULL,    1.0,  40"
    })
    void whole_minutes_are_the_warm_up_and_the_main_part_rounded_up(
            String family, Integer aimMinutes, Dose dose, double factor, int minutes) {
        assertThat(Demands.wholeMinutes(catalogue.family(family), aimMinutes, dose, factor))
                .isEqualTo(minutes);
    }

    @ParameterizedTest
    @CsvSource({"15, false, 5", "15, true, 10", "3, false, 3", "3, true, 3", "10, true, 10"})
    void a_shared_warm_up_is_5_minutes_and_10_before_the_days_first_sprint_or_lift(
            int warmUp, boolean first, int minutes) {
        assertThat(Demands.sharedWarmUp(warmUp, first)).isEqualTo(minutes);
    }

    @Test
    void load_is_exertion_times_minutes() {
        assertThat(Demands.loadTenths(5, 60)).isEqualTo(3_000);
        assertThat(Demands.loadTenths(6.5, 45)).isEqualTo(2_925);
    }

    @ParameterizedTest
    @CsvSource({"90, 9200", "45, 4600", "75, 7667", "0, 0"})
    void load_of_a_fixture_goes_by_the_minutes_played(int played, int tenths) {
        assertThat(Demands.fixtureLoadTenths(8, 90, 25, played)).isEqualTo(tenths);
    }

    @ParameterizedTest
    @CsvSource({
        "max-velocity, HIGH",
        "team-practice, LOW",
        "small-sided-games, MIDDLE",
        "aerobic-intervals, MIDDLE",
        "weightlifting-power, HIGH",
        "upper-hypertrophy, LOW",
        "primer, LOW",
        "recovery, LOW",
        "skill-at-speed, LOW",
        "meet-lift, HIGH"
    })
    void a_family_is_classed_by_one_full_session_of_its_own(String family, DayClass expected) {
        assertThat(Demands.classOf(catalogue.family(family), false)).isEqualTo(expected);
    }
}
