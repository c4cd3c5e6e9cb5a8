package weekwright.model.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class LoadRatioTest {
    private static double[] month(double usual, double last, int days) {
        double[] all = new double[21 + days];
        Arrays.fill(all, usual);
        Arrays.fill(all, 21, all.length, last);
        return all;
    }

    /** Conventions of Gabbett 2016, Windt and Gabbett, Williams et al. 2017; worked by hand. */
    @Test
    void three_weeks_at_300_and_one_at_600() {
        double[] days = month(300, 600, 7);
        assertThat(LoadRatio.COUPLED.on(days).orElseThrow()).isCloseTo(1.6, within(1e-9));
        assertThat(LoadRatio.UNCOUPLED.on(days).orElseThrow()).isCloseTo(2.0, within(1e-9));
        assertThat(LoadRatio.WEIGHTED.on(days).orElseThrow()).isCloseTo(1.3394, within(0.00005));
        assertThat(LoadRatio.weighted(days, 7)).isCloseTo(559.955, within(0.0005));
        assertThat(LoadRatio.weighted(days, 28)).isCloseTo(418.080, within(0.0005));
    }

    /** Williams et al. 2017, BJSM 51:209-210, the formula; worked by hand: 375.000 and 320.690 after one day. */
    @Test
    void the_weighted_mean_day_by_day() {
        assertThat(LoadRatio.weighted(month(300, 600, 1), 7)).isCloseTo(375.000, within(0.0005));
        assertThat(LoadRatio.weighted(month(300, 600, 1), 28)).isCloseTo(320.690, within(0.0005));
        assertThat(LoadRatio.weighted(month(300, 600, 3), 7)).isCloseTo(473.438, within(0.0005));
        assertThat(LoadRatio.weighted(month(300, 600, 3), 28)).isCloseTo(357.887, within(0.0005));
        assertThat(LoadRatio.weighted(month(300, 900, 1), 7)).isCloseTo(450.000, within(0.0005));
        assertThat(LoadRatio.weighted(month(300, 900, 1), 28)).isCloseTo(341.379, within(0.0005));
    }

    /** Four real weeks (SoccerMon data set, Scientific Data 2024, doi 10.1038/s41597-024-03386-x): three verdicts. */
    @Test
    void one_player_s_month_has_three_ratios() {
        double[] days = {
            280, 300, 0, 240, 240, 240, 100, 180, 240, 450, 140, 360, 40, 0, 350, 240, 490, 40, 0, 120, 630, 720, 180,
            500, 210, 580, 720, 240
        };
        assertThat(LoadRatio.mean(days, 7, 0)).isCloseTo(450.00, within(0.005));
        assertThat(LoadRatio.mean(days, 28, 0)).isCloseTo(279.64, within(0.005));
        assertThat(LoadRatio.COUPLED.on(days).orElseThrow()).isCloseTo(1.609, within(0.0005));
        assertThat(LoadRatio.UNCOUPLED.on(days).orElseThrow()).isCloseTo(2.019, within(0.0005));
        assertThat(LoadRatio.WEIGHTED.on(days).orElseThrow()).isCloseTo(1.293, within(0.0005));
    }

    @Test
    void before_28_days_and_after_nothing_there_is_no_ratio() {
        assertThat(LoadRatio.COUPLED.on(Arrays.copyOf(month(300, 600, 7), 27))).isEmpty();
        double[] fresh = month(0, 500, 7);
        assertThat(LoadRatio.COUPLED.on(fresh).orElseThrow()).as("its ceiling").isCloseTo(4, within(1e-9));
        assertThat(LoadRatio.UNCOUPLED.on(fresh)).isEmpty();
        assertThat(LoadRatio.WEIGHTED.on(new double[28])).isEmpty();
    }

    @Test
    void a_ratio_never_comes_without_its_caveat() {
        assertThat(LoadRatio.CAVEAT).contains("does not predict injury");
        assertThat(LoadRatio.CRITIQUES).hasSize(3);
    }

    @Test
    void nothing_at_all_has_no_ratio() {
        assertThat(LoadRatio.coupled(7, 28, new double[28])).isEmpty();
    }
}
