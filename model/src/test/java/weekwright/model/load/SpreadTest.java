package weekwright.model.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.model.load.Spread.Divisor;

/** Monotony and strain: Foster 1998, MSSE 30:1164-1168; load: Foster et al. 2001, JSCR 15:109-115. */
class SpreadTest {
    private static double[] days(String text) {
        return Stream.of(text.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    }

    /**
     * First two rows worked by hand; the others four weeks of one player (SoccerMon data set, Scientific Data 2024,
     * doi 10.1038/s41597-024-03386-x), worked by hand as well.
     */
    static Stream<Arguments> weeks() {
        return Stream.of(
                Arguments.of("300 480 0 420 240 630 60", 2130, 209.3430, 226.1163, 1.4535, 1.3457, 3096.01, 2866.35),
                Arguments.of("400 0 400 0 400 0 400", 1600, 197.9487, 213.8090, 1.1547, 1.0690, 1847.52, 1710.47),
                Arguments.of("280 300 0 240 240 240 100", 1400, 100.85, 108.93, 1.983, 1.836, 2776.3, 2570.4),
                Arguments.of("180 240 450 140 360 40 0", 1410, 150.85, 162.93, 1.335, 1.236, 1882.8, 1743.1),
                Arguments.of("350 240 490 40 0 120 630", 1870, 218.29, 235.78, 1.224, 1.133, 2288.5, 2118.8),
                Arguments.of("720 180 500 210 580 720 240", 3150, 220.32, 237.98, 2.042, 1.891, 6433.7, 5956.4));
    }

    @ParameterizedTest
    @MethodSource("weeks")
    void weeks_worked_by_hand(
            String loads, double total, double sdN, double sd1, double monoN, double mono1, double strainN, double s1) {
        Spread week = Spread.of(days(loads));
        assertThat(week.total()).isEqualTo(total);
        assertThat(week.deviation(Divisor.POPULATION)).isCloseTo(sdN, within(0.005));
        assertThat(week.deviation(Divisor.SAMPLE)).isCloseTo(sd1, within(0.005));
        assertThat(week.monotony(Divisor.POPULATION).orElseThrow()).isCloseTo(monoN, within(0.0005));
        assertThat(week.monotony(Divisor.SAMPLE).orElseThrow()).isCloseTo(mono1, within(0.0005));
        assertThat(week.strain(Divisor.POPULATION).orElseThrow()).isCloseTo(strainN, within(0.05));
        assertThat(week.strain(Divisor.SAMPLE).orElseThrow()).isCloseTo(s1, within(0.05));
    }

    /** Apache Commons Math, StandardDeviation. */
    @Test
    void the_deviation_is_that_of_a_statistics_library() {
        Random random = new Random(1998);
        for (int i = 0; i < 500; i++) {
            double[] days = random.doubles(7, 0, 900).toArray();
            Spread week = Spread.of(days);
            assertThat(week.deviation(Divisor.SAMPLE))
                    .isCloseTo(new StandardDeviation(true).evaluate(days), within(1e-9));
            assertThat(week.deviation(Divisor.POPULATION))
                    .isCloseTo(new StandardDeviation(false).evaluate(days), within(1e-9));
            assertThat(week.deviation(Divisor.SAMPLE) / week.deviation(Divisor.POPULATION))
                    .isCloseTo(Math.sqrt(7.0 / 6), within(1e-9));
        }
    }

    @Test
    void days_all_alike_have_no_monotony_and_an_empty_week_has_load_nought() {
        Spread even = Spread.of(300, 300, 300, 300, 300, 300, 300);
        assertThat(even.monotony(Divisor.SAMPLE)).isEmpty();
        assertThat(even.strain(Divisor.SAMPLE)).isEmpty();
        Spread empty = Spread.of(0, 0, 0, 0, 0, 0, 0);
        assertThat(empty.total()).isZero();
        assertThat(empty.monotony(Divisor.POPULATION)).isEmpty();
    }

    /** 1850 to 2130 AU is a rise of 15.14 %, worked by hand. */
    @Test
    void change_from_week_to_week() {
        assertThat(Change.percent(1850, 2130).orElseThrow()).isCloseTo(15.14, within(0.005));
        assertThat(Change.percent(0, 500)).isEmpty();
    }

    /** Coupled = 4U/(U + 3), by algebra. */
    @ParameterizedTest
    @CsvSource({"1.3, 1.2093", "1.5, 1.3333", "2, 1.6"})
    void coupled_and_uncoupled_are_tied(double uncoupled, double coupled) {
        double[] days = new double[28];
        java.util.Arrays.fill(days, 300);
        java.util.Arrays.fill(days, 21, 28, 300 * uncoupled);
        assertThat(LoadRatio.UNCOUPLED.on(days).orElseThrow()).isCloseTo(uncoupled, within(1e-9));
        assertThat(LoadRatio.COUPLED.on(days).orElseThrow()).isCloseTo(coupled, within(0.00005));
    }

    @Test
    void one_day_has_no_spread_and_two_have() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Spread.of(300))
                .withMessage("a spread is that of two days or more");
        assertThat(Spread.of(200, 400).deviation(Divisor.POPULATION)).isEqualTo(100);
    }
}
