package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import weekwright.model.prescription.SprintProfile.Split;

class SprintProfileTest {
    private static List<Split> exact(double top, double constant, double... metres) {
        SprintProfile truth = new SprintProfile(top, constant, 9, 0);
        return DoubleStream.of(metres)
                .mapToObj(m -> new Split(m, truth.seconds(m)))
                .toList();
    }

    @Test
    void splits_of_a_known_profile_give_it_back() {
        Random random = new Random(100);
        for (int i = 0; i < 300; i++) {
            double top = 7 + 4 * random.nextDouble();
            double constant = 0.8 + 0.6 * random.nextDouble();
            SprintProfile found = SprintProfile.of(exact(top, constant, 10, 20, 30, 40));
            assertThat(found.topSpeed()).isCloseTo(top, within(1e-3));
            assertThat(found.timeConstant()).isCloseTo(constant, within(1e-3));
            assertThat(found.tested()).isTrue();
            assertThat(found.largestMiss()).isLessThan(1e-4);
        }
    }

    @Test
    void two_splits_are_met_exactly_and_nothing_is_known_of_the_fit() {
        SprintProfile found = SprintProfile.of(exact(9, 1.1, 10, 30));
        assertThat(found.topSpeed()).isCloseTo(9, within(1e-3));
        assertThat(found.tested()).isFalse();
    }

    @Test
    void time_and_distance_undo_each_other_and_time_rises_with_distance() {
        SprintProfile profile = new SprintProfile(9.2, 1.15, 4, 0);
        double before = 0;
        for (int metres = 1; metres <= 60; metres++) {
            double seconds = profile.seconds(metres);
            assertThat(profile.metres(seconds)).isCloseTo(metres, within(1e-6));
            assertThat(seconds).isGreaterThan(before);
            before = seconds;
        }
    }

    /**
     * The fastest 100 m, Berlin 2009: 20 m 2.89, 40 m 4.64, 60 m 6.31 s, reaction 0.146 s; measured top speed 12.2 to 12.4
     * m/s (all from memory). The model with the reaction taken off must find that top speed.
     */
    @Test
    void the_fastest_hundred_metres() {
        SprintProfile found = SprintProfile.of(
                List.of(new Split(20, 2.89 - 0.146), new Split(40, 4.64 - 0.146), new Split(60, 6.31 - 0.146)));
        assertThat(found.topSpeed()).isBetween(11.9, 12.5);
        assertThat(found.timeConstant()).isBetween(1.0, 1.5);
    }

    @Test
    void what_cannot_carry_a_profile_is_refused_in_words() {
        refused("a profile needs two splits or more of one start and timing", new Split(30, 4.1));
        refused(
                "between 10 and 20 m the times cannot be: check the two splits",
                new Split(10, 2.0),
                new Split(20, 1.9));
        refused(
                "between 10 and 30 m the times cannot be: check the two splits",
                new Split(10, 1.9),
                new Split(30, 3.2));
        refused(
                "the longest split ends before top speed is near: time a longer run as well",
                exact(9, 1.2, 5, 8).toArray(Split[]::new));
        refused(
                "a split lies 0.11 s from the curve of the others: measure it again",
                new Split(10, 1.9),
                new Split(20, 3.25),
                new Split(30, 4.2),
                new Split(40, 5.5));
    }

    private static void refused(String message, Split... splits) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SprintProfile.of(List.of(splits)))
                .withMessage(message);
    }
}
