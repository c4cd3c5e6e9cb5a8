package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Time = best / share, by definition; the slow edge rounded towards faster is an expert proposal. */
class SprintTimesTest {
    @ParameterizedTest
    @CsvSource({
        "1.00, 0.95, 1.0526, 1.05",
        "0.98, 0.95, 1.0316, 1.03",
        "1.05, 0.90, 1.1667, 1.16",
        "4.12, 0.95, 4.3368, 4.33",
        "4.12, 0.90, 4.5778, 4.57",
        "11.20, 0.75, 14.9333, 14.93",
        "11.20, 0.65, 17.2308, 17.23"
    })
    void the_slowest_time_let_in(double best, double share, double exact, double shown) {
        assertThat(best / share).isCloseTo(exact, within(0.00005));
        assertThat(SprintTimes.slowest(best, share)).isEqualTo(shown);
    }

    @Test
    void no_run_too_slow_is_ever_let_in_and_a_faster_best_never_makes_it_easier() {
        Random random = new Random(2019);
        for (int i = 0; i < 20_000; i++) {
            double best = Math.round((0.8 + 12 * random.nextDouble()) * 100) / 100.0;
            double share = random.nextBoolean() ? 0.95 : 0.90;
            double edge = SprintTimes.slowest(best, share);
            assertThat(best / edge).as("%s at %s", best, share).isGreaterThanOrEqualTo(share - 1e-9);
            assertThat(best / (edge + 0.01)).isLessThan(share);
            assertThat(SprintTimes.slowest(best - 0.01, share)).isLessThanOrEqualTo(edge);
            assertThat(best / SprintTimes.fastest(best, share)).isLessThanOrEqualTo(share + 1e-9);
        }
    }

    /** Track convention, 100 and 200 m (secondary pages); 400 m from memory; 40 yd Meinke et al. 2009. */
    @Test
    void a_hand_time_gets_what_is_published_for_its_distance_and_nothing_else() {
        assertThat(SprintTimes.electronic(100, 11.0, false)).hasValue(11.24);
        assertThat(SprintTimes.electronic(200, 22.0, false)).hasValue(22.24);
        assertThat(SprintTimes.electronic(400, 50.0, false)).hasValue(50.14);
        assertThat(SprintTimes.electronic(36.576, 4.6, false).orElseThrow()).isCloseTo(4.825, within(1e-9));
        assertThat(SprintTimes.electronic(30, 4.0, false)).isEmpty();
        assertThat(SprintTimes.electronic(100, 11.0, true))
                .as("never a flying run")
                .isEmpty();
    }

    /** Two runs in a row: rule of thumb. 3 and 5 %: expert proposal. */
    @Test
    void two_slow_runs_in_a_row_end_the_work() {
        // 1.00 / 0.97 = 1.0309
        assertThat(SprintTimes.stops(List.of(1.00, 1.02, 1.04), 3)).isFalse();
        assertThat(SprintTimes.stops(List.of(1.00, 1.04, 1.03), 3)).isFalse();
        assertThat(SprintTimes.stops(List.of(1.02, 1.00, 1.04, 1.035), 3)).isTrue();
        assertThat(SprintTimes.stops(List.of(1.04, 1.00, 1.04), 3)).isFalse();
        // 4.12 / 0.95 = 4.3368
        assertThat(SprintTimes.stops(List.of(4.12, 4.33, 4.33), 5)).isFalse();
        assertThat(SprintTimes.stops(List.of(4.12, 4.34, 4.34), 5)).isTrue();
        assertThat(SprintTimes.stops(List.of(4.12, 4.60), 5))
                .as("a best and one run say nothing")
                .isFalse();
    }

    /** 1 min for each 10 m: common practice, no source. */
    @Test
    void rest_follows_the_distance() {
        assertThat(SprintTimes.restSeconds(50)).isEqualTo(300);
        assertThat(SprintTimes.restSeconds(30)).isEqualTo(180);
        assertThat(SprintTimes.restSeconds(5)).isEqualTo(60);
    }

    /** Baker, UKSCA (secondary pages): distance = speed × share × seconds. 1500 m in 330 s is 4.545 m/s. */
    @Test
    void distances_by_aerobic_speed() {
        assertThat(AerobicSpeed.metres(4.4, 1.2, 15)).isCloseTo(79.2, within(1e-9));
        assertThat(AerobicSpeed.metres(4.4, 1.1, 15)).isCloseTo(72.6, within(1e-9));
        assertThat(AerobicSpeed.metres(4.4, 1.0, 15)).isCloseTo(66.0, within(1e-9));
        assertThat(AerobicSpeed.metres(4.4, 0.7, 15)).isCloseTo(46.2, within(1e-9));
        assertThat(AerobicSpeed.metres(4.0, 0.7, 15)).isCloseTo(42.0, within(1e-9));
        assertThat(AerobicSpeed.ofTest(1500, 330)).isCloseTo(4.5455, within(0.00005));
    }

    /** 0.97 / 0.97 and 0.95 / 0.95 are one second: a run on the edge is in. */
    @Test
    void what_lies_on_the_edge_is_in() {
        assertThat(SprintTimes.fastest(0.95, 0.95)).isEqualTo(1.0);
        assertThat(SprintTimes.stops(List.of(0.97, 1.00, 1.00), 3)).isFalse();
    }

    /** 1200 to 1800 m or 5 to 6 min: Baker, UKSCA (secondary pages). */
    @Test
    void a_test_of_aerobic_speed_is_neither_shorter_nor_longer() {
        assertThat(AerobicSpeed.isTest(1_200, 200)).isTrue();
        assertThat(AerobicSpeed.isTest(1_800, 500)).isTrue();
        assertThat(AerobicSpeed.isTest(1_000, 300)).isTrue();
        assertThat(AerobicSpeed.isTest(2_000, 360)).isTrue();
        assertThat(AerobicSpeed.isTest(1_199, 299)).isFalse();
        assertThat(AerobicSpeed.isTest(1_801, 361)).isFalse();
    }
}
