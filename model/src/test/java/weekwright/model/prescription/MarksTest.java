package weekwright.model.prescription;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.model.prescription.Someone.aerobic;
import static weekwright.model.prescription.Someone.flying;
import static weekwright.model.prescription.Someone.lift;
import static weekwright.model.prescription.Someone.marks;
import static weekwright.model.prescription.Someone.sprint;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.model.prescription.Found.Age;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.SprintStart;
import weekwright.model.scenario.Timing;

/** What marks say on a day. Ages of 90 and 180 days: expert proposal. */
class MarksTest {
    @Test
    void the_fastest_time_over_a_distance_counts() {
        Found found = marks(sprint(30, 4.2), sprint(30, 4.12), sprint(30, 4.3)).sprint(30, SprintStart.STANDING);

        assertThat(found.value()).isEqualTo(4.12);
        assertThat(found.estimated()).isFalse();
        assertThat(found.age()).isEqualTo(Age.FRESH);
    }

    @Test
    void a_mark_of_90_days_is_fresh_one_of_91_is_old_and_one_of_181_gives_no_number() {
        assertThat(aged(90).age()).isEqualTo(Age.FRESH);
        assertThat(aged(91).age()).isEqualTo(Age.OLD);
        assertThat(aged(180).value()).isEqualTo(4.12);
        assertThat(aged(181).age()).isEqualTo(Age.TOO_OLD);
        assertThat(aged(181).value()).isNull();
    }

    private static Found aged(int days) {
        return marks(sprint(30, 4.12, SprintStart.STANDING, Timing.ELECTRONIC, days))
                .sprint(30, SprintStart.STANDING);
    }

    @Test
    void a_slower_fresh_mark_goes_before_a_faster_old_one() {
        Found found = marks(sprint(30, 4.3), sprint(30, 4.0, SprintStart.STANDING, Timing.ELECTRONIC, 120))
                .sprint(30, SprintStart.STANDING);

        assertThat(found.value()).isEqualTo(4.3);
    }

    @Test
    void an_electronic_time_goes_before_any_hand_time() {
        Mark hand = sprint(30, 3.9, SprintStart.STANDING, Timing.HAND, 1);

        assertThat(marks(hand, sprint(30, 4.2, SprintStart.STANDING, Timing.ELECTRONIC, 120))
                        .sprint(30, SprintStart.STANDING)
                        .value())
                .isEqualTo(4.2);
        assertThat(marks(hand).sprint(30, SprintStart.STANDING).value()).isEqualTo(3.9);
    }

    @Test
    void a_start_is_never_taken_for_another() {
        assertThat(marks(flying(30, 3.2)).sprint(30, SprintStart.STANDING)).isEqualTo(Found.NOTHING);
        assertThat(marks(sprint(30, 4.1)).sprint(30, SprintStart.BLOCKS)).isEqualTo(Found.NOTHING);
    }

    /** Two splits of one day carry the published model; the time between them is worked out, and said to be. */
    @Test
    void splits_of_a_day_give_times_between_them() {
        Found found = marks(sprint(10, 1.85), sprint(30, 4.12)).sprint(20, SprintStart.STANDING);

        assertThat(found.estimated()).isTrue();
        assertThat(found.unsure()).isTrue();
        assertThat(found.value()).isBetween(2.95, 3.1);
    }

    @Test
    void nothing_is_worked_out_beyond_the_longest_split() {
        assertThat(marks(sprint(10, 1.85), sprint(30, 4.12)).sprint(40, SprintStart.STANDING))
                .isEqualTo(Found.NOTHING);
    }

    /** 10 m in 1.00 s is 10 m/s, so 20 m take 2.00 s: by definition of speed. */
    @Test
    void a_flying_split_gives_top_speed_and_other_flying_times() {
        Marks marks = marks(flying(10, 1.00));

        assertThat(marks.topSpeed().value()).isCloseTo(10, within(1e-9));
        assertThat(marks.sprint(20, SprintStart.FLYING).value()).isCloseTo(2.00, within(1e-9));
        assertThat(marks.sprint(20, SprintStart.FLYING).estimated()).isTrue();
    }

    /** Epley 1985: 140 × 3 is 154.0, 100 × 5 116.667. */
    @Test
    void the_set_that_stands_for_the_largest_maximum_counts() {
        Found found = marks(lift("back-squat", 140, 3, 3), lift("back-squat", 130, 5, 3))
                .lift("back-squat");

        assertThat(found.value()).isCloseTo(154.0, within(1e-9));
        assertThat(found.estimated()).isTrue();
        assertThat(marks(lift("back-squat", 140, 1, 3)).lift("back-squat").estimated())
                .isFalse();
        assertThat(marks(lift("back-squat", 100, 8, 3)).lift("back-squat").unsure())
                .isTrue();
    }

    /** 1500 m in 330 s is 4.5455 m/s (Baker, UKSCA, seen in secondary pages). */
    @Test
    void a_test_run_gives_aerobic_speed() {
        assertThat(marks(sprint(1500, 330)).aerobicSpeed().value()).isCloseTo(4.5455, within(0.00005));
        assertThat(marks(sprint(1500, 330)).aerobicSpeed().estimated()).isTrue();
        assertThat(marks(aerobic(4.4)).aerobicSpeed().value()).isEqualTo(4.4);
        assertThat(marks(sprint(400, 60)).aerobicSpeed()).isEqualTo(Found.NOTHING);
    }

    @Test
    void marks_of_tomorrow_are_not_known_today() {
        assertThat(marks(sprint(30, 4.1, SprintStart.STANDING, Timing.ELECTRONIC, -1))
                        .sprint(30, SprintStart.STANDING))
                .isEqualTo(Found.NOTHING);
    }

    static Stream<Arguments> impossible() {
        return Stream.of(
                Arguments.of(
                        lift("back-squat", 900, 1, 1),
                        "back-squat 900 kg is more than anybody has lifted: not used, check it"),
                Arguments.of(sprint(100, 6), "100 m in 6 s is faster than anybody has run: not used, check it"),
                Arguments.of(flying(10, 0.7), "10 m in 0.7 s is faster than anybody has run: not used, check it"),
                Arguments.of(
                        lift("bench-press", 60, 40, 1),
                        "bench-press 60 kg × 40: a maximum is estimated from 10 repetitions at most: not used, test with"
                                + " a heavier weight"),
                Arguments.of(aerobic(8.5), "an aerobic speed of 8.5 m/s is faster than anybody's: not used, check it"));
    }

    @ParameterizedTest
    @MethodSource
    void impossible(Mark mark, String words) {
        Marks marks = marks(mark);

        assertThat(marks.refused()).containsExactly(words);
        assertThat(marks.sprint(100, SprintStart.STANDING)).isEqualTo(Found.NOTHING);
        assertThat(marks.lift("back-squat")).isEqualTo(Found.NOTHING);
        assertThat(marks.lift("bench-press")).isEqualTo(Found.NOTHING);
    }

    /** Fastest runs ever: 100 m in 9.58 s from blocks, 40 yd in 4.21 s, 10 m flying in 0.81 s (all from memory). */
    @Test
    void the_fastest_of_the_world_are_believed() {
        Marks marks = marks(
                sprint(100, 9.58, SprintStart.BLOCKS, Timing.ELECTRONIC, 5), sprint(36.576, 4.21), flying(10, 0.81));

        assertThat(marks.refused()).isEmpty();
    }

    /** Limits of belief: expert proposal and from memory, beside each in the code. */
    @Test
    void what_is_just_possible_counts_and_a_little_more_is_refused() {
        assertThat(marks(lift("back-squat", 500, 1, 3)).refused()).isEmpty();
        assertThat(marks(lift("back-squat", 500.5, 1, 3)).refused()).hasSize(1);
        assertThat(marks(lift("back-squat", 100, 10, 3)).refused()).isEmpty();
        assertThat(marks(lift("back-squat", 100, 11, 3)).refused()).hasSize(1);
        assertThat(marks(aerobic(7)).refused()).isEmpty();
        assertThat(marks(aerobic(7.01)).refused()).hasSize(1);
    }

    @Test
    void a_lift_is_never_taken_for_another_nor_for_a_run() {
        assertThat(marks(lift("front-squat", 120, 1, 3)).lift("back-squat")).isEqualTo(Found.NOTHING);
        assertThat(marks(lift("front-squat", 120, 1, 3)).aerobicSpeed()).isEqualTo(Found.NOTHING);
        assertThat(marks(lift("front-squat", 120, 1, 3)).topSpeed()).isEqualTo(Found.NOTHING);
    }

    @Test
    void many_repetitions_make_an_estimate_unsure() {
        assertThat(marks(lift("back-squat", 100, RepMax.UNSURE_FROM, 3))
                        .lift("back-squat")
                        .unsure())
                .isTrue();
        assertThat(marks(lift("back-squat", 100, RepMax.UNSURE_FROM - 1, 3))
                        .lift("back-squat")
                        .unsure())
                .isFalse();
    }

    /** 10 m in 1.10 s are 9.09 m/s, 30 m in 2.90 s are 10.34 m/s: the faster counts, not the shorter. */
    @Test
    void top_speed_is_that_of_the_fastest_flying_split() {
        assertThat(marks(flying(10, 1.10), flying(30, 2.90)).topSpeed().value()).isCloseTo(10.345, within(0.001));
    }

    @Test
    void without_a_flying_split_top_speed_is_that_of_the_profile() {
        Found found = marks(sprint(10, 1.85), sprint(30, 4.12)).topSpeed();

        assertThat(found.value()).isBetween(8.0, 10.0);
        assertThat(found.estimated()).isTrue();
        assertThat(found.unsure()).as("two splits alone").isTrue();
        assertThat(found.mark()).isEqualTo(sprint(30, 4.12));
    }

    /** A profile is made of electronic splits of one day and one start, at most 100 m long and not too old. */
    @Test
    void splits_that_do_not_belong_together_make_no_profile() {
        Mark thirty = sprint(30, 4.12);
        SprintStart standing = SprintStart.STANDING;

        assertThat(marks(sprint(10, 1.85), thirty).profile(standing)).isNotNull();
        assertThat(marks(sprint(10, 1.85, SprintStart.BLOCKS, Timing.ELECTRONIC, 10), thirty)
                        .profile(standing))
                .isNull();
        assertThat(marks(sprint(10, 1.85, standing, Timing.HAND, 10), thirty).profile(standing))
                .isNull();
        assertThat(marks(sprint(10, 1.85, standing, Timing.ELECTRONIC, 11), thirty)
                        .profile(standing))
                .isNull();
        assertThat(marks(thirty, sprint(101, 12.0)).profile(standing)).isNull();
        assertThat(marks(
                                sprint(10, 1.85, standing, Timing.ELECTRONIC, 181),
                                sprint(30, 4.12, standing, Timing.ELECTRONIC, 181))
                        .profile(standing))
                .isNull();
    }

    /** 10 m in 1.00 s are 10 m/s, 30 m in 3.20 s 9.375. */
    @Test
    void top_speed_is_the_fastest_and_not_the_longest_of_flying_runs() {
        assertThat(marks(flying(30, 3.2), flying(10, 1.0)).topSpeed().value()).isEqualTo(10);
    }

    @Test
    void a_day_with_one_split_makes_no_profile_and_the_one_before_it_does() {
        SprintProfile before = marks(
                        sprint(10, 1.9, SprintStart.STANDING, Timing.ELECTRONIC, 20),
                        sprint(40, 5.3, SprintStart.STANDING, Timing.ELECTRONIC, 20))
                .profile(SprintStart.STANDING);

        assertThat(before).isNotNull();
        assertThat(marks(
                                sprint(10, 1.9, SprintStart.STANDING, Timing.ELECTRONIC, 20),
                                sprint(40, 5.3, SprintStart.STANDING, Timing.ELECTRONIC, 20),
                                sprint(20, 3.0, SprintStart.STANDING, Timing.ELECTRONIC, 3))
                        .profile(SprintStart.STANDING))
                .isEqualTo(before);
    }
}
