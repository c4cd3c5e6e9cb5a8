package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Bars and plates: IWF, from memory; smallest pair and ties: common practice and expert proposal. */
class PlatesTest {
    private static final Plates KG = Plates.KILOGRAMS;

    @Test
    void a_share_of_the_maximum_becomes_what_can_be_loaded() {
        assertThat(KG.nearest(142.5 * 0.85)).hasValue(120.0);
        assertThat(KG.side(120)).isEqualTo(50.0);
        assertThat(KG.nearest(182.5 * 0.72)).hasValue(132.5);
        assertThat(KG.down(182.5 * 0.72)).hasValue(130.0);
    }

    @Test
    void of_two_equally_near_weights_the_lighter_is_taken() {
        assertThat(KG.nearest(125 * 0.85)).hasValue(105.0);
    }

    @Test
    void less_than_the_bar_cannot_be_loaded() {
        assertThat(KG.down(19.9)).isEmpty();
        assertThat(KG.nearest(12)).isEmpty();
        assertThat(KG.down(20)).hasValue(20.0);
    }

    @Test
    void a_gym_in_pounds() {
        assertThat(Plates.POUNDS.down(314)).hasValue(310.0);
        assertThat(Plates.POUNDS.nearest(313)).hasValue(315.0);
    }

    /** 15 kg bar with discs of 20 and 15 only: 2 × 15 more than the bar, not the 2 × 17.5 that a step would give. */
    @Test
    void only_the_plates_that_are_there() {
        Plates few = new Plates(15, 20, 15);
        assertThat(few.down(52)).hasValue(45.0);
        assertThat(few.nearest(52)).hasValue(55.0);
        assertThat(few.makes(85)).isTrue();
        assertThat(few.makes(65)).isFalse();
    }

    @Test
    void what_is_given_can_always_be_loaded_and_down_is_never_more() {
        Random random = new Random(7);
        for (int i = 0; i < 5_000; i++) {
            Plates plates = random.nextBoolean() ? KG : Plates.POUNDS;
            double weight = plates.bar() + 400 * random.nextDouble();
            double down = plates.down(weight).orElseThrow();
            double nearest = plates.nearest(weight).orElseThrow();
            assertThat(plates.makes(down)).isTrue();
            assertThat(plates.makes(nearest)).isTrue();
            assertThat(down).isLessThanOrEqualTo(weight + 1e-9).isGreaterThan(weight - 5.0 - 1e-9);
            assertThat(Math.abs(nearest - weight)).isLessThanOrEqualTo(2.5 + 1e-9);
            assertThat(plates.down(weight + 1).orElseThrow()).isGreaterThanOrEqualTo(down);
        }
    }

    @Test
    void the_bar_alone_can_be_made_and_less_cannot() {
        assertThat(KG.makes(20)).isTrue();
        assertThat(KG.makes(17.5)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Plates(20, 0))
                .withMessage("a plate weighs more than nothing, not 0.0");
    }
}
