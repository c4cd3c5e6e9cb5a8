package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RepMaxTest {
    /** Formulas of Epley 1985, Brzycki 1993, Lombardi 1989, Mayhew 1992, O'Conner 1989, Wathan 1994; worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "EPLEY, 116.667, 133.333, 154.000",
        "BRZYCKI, 112.500, 133.333, 148.235",
        "LOMBARDI, 117.462, 125.893, 156.257",
        "MAYHEW, 119.011, 130.934, 159.586",
        "OCONNER, 112.500, 125.000, 150.500",
        "WATHAN, 116.583, 134.747, 152.572"
    })
    void a_set_to_failure_estimates_the_maximum(RepMax formula, double fives, double tens, double triples) {
        assertThat(formula.maximum(100, 5)).isCloseTo(fives, within(0.0005));
        assertThat(formula.maximum(100, 10)).isCloseTo(tens, within(0.0005));
        assertThat(formula.maximum(140, 3)).isCloseTo(triples, within(0.0005));
    }

    /** Without this Epley gives 103.333 and Mayhew 108.864 for a single of 100. */
    @ParameterizedTest
    @EnumSource
    void one_repetition_is_the_maximum_itself(RepMax formula) {
        assertThat(formula.maximum(100, 1)).isEqualTo(100);
    }

    @Test
    void two_pairs_of_formulas_meet() {
        assertThat(RepMax.EPLEY.maximum(90, 10)).isCloseTo(RepMax.BRZYCKI.maximum(90, 10), within(1e-9));
        assertThat(RepMax.BRZYCKI.maximum(90, 5)).isCloseTo(RepMax.OCONNER.maximum(90, 5), within(1e-9));
    }

    /** Inverses: Epley 1/(1 + r/30), Brzycki (37 − r)/36, in per cent. */
    @ParameterizedTest
    @CsvSource({"2, 93.8, 97.2", "5, 85.7, 88.9", "8, 78.9, 80.6", "10, 75.0, 75.0"})
    void a_formula_turned_round_gives_the_share(int repetitions, double epley, double brzycki) {
        assertThat(100 * RepMax.EPLEY.share(repetitions)).isCloseTo(epley, within(0.05));
        assertThat(100 * RepMax.BRZYCKI.share(repetitions)).isCloseTo(brzycki, within(0.05));
    }

    @ParameterizedTest
    @EnumSource
    void share_and_maximum_undo_each_other_and_more_repetitions_mean_a_smaller_share(RepMax formula) {
        Random random = new Random(41);
        for (int i = 0; i < 500; i++) {
            int repetitions = 1 + random.nextInt(10);
            double weight = 20 + 200 * random.nextDouble();
            double maximum = formula.maximum(weight, repetitions);
            assertThat(maximum * formula.share(repetitions)).isCloseTo(weight, within(1e-9));
            if (repetitions < 10) {
                assertThat(formula.share(repetitions + 1)).isLessThan(formula.share(repetitions));
                assertThat(formula.maximum(weight, repetitions + 1)).isGreaterThan(maximum);
            }
        }
    }

    /** NSCA load chart, repetitions 1 to 10 (seen in a copy). */
    @Test
    void the_chart() {
        assertThat(IntStream.rangeClosed(1, 10).map(RepMax::chartPercent))
                .containsExactly(100, 95, 93, 90, 87, 85, 83, 80, 77, 75);
    }

    /** No more than 10 repetitions: Reynolds, Gordon and Robergs 2006, JSCR 20:584-592. */
    @Test
    void forty_repetitions_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RepMax.EPLEY.maximum(60, 40))
                .withMessage(
                        "a maximum is estimated from 1 to 10 repetitions, not from 40: test with a heavier weight");
        assertThatIllegalArgumentException().isThrownBy(() -> RepMax.BRZYCKI.maximum(60, 11));
        assertThatIllegalArgumentException().isThrownBy(() -> RepMax.EPLEY.share(0));
    }
}
