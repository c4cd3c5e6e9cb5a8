package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.explain.DayPicture;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.LendsAt;
import weekwright.model.scenario.Weekday;

/**
 * A practice lends minutes to a micro session: practice from 18:00 to 19:25 on the turf, 15 minutes of warm-up first, 425
 * AU; a micro dose of acceleration has 15 minutes after its own warm-up, of maximal velocity 15, of full-body strength 15
 * (expert proposals).
 */
class LentMinutesTest {
    private static Squad practice(int lent, LendsAt at) {
        return squad().practice("practice", "2027-03-02T18:00").at("turf-pitch").lending(lent, at);
    }

    private static Squad micro(Squad squad, String start) {
        return squad.placed("acceleration", "2027-03-02T" + start).dose(Dose.MICRO);
    }

    private static int minutes(Squad squad) {
        Placement placed = squad.judged().judged().plan().placements().get(0);
        return java.util.Objects.requireNonNull(placed.minutes());
    }

    private static double load(Squad squad) {
        return squad.judged().judged().days().stream()
                .mapToDouble(DayPicture::load)
                .sum();
    }

    /** 20 minutes from 18:15 on, after the practice's own warm-up. */
    @Test
    void it_is_its_main_part_alone_where_that_lies_in_the_lent_minutes() {
        assertThat(minutes(micro(practice(20, LendsAt.START), "18:14"))).isEqualTo(35);
        assertThat(minutes(micro(practice(20, LendsAt.START), "18:15"))).isEqualTo(15);
        assertThat(minutes(micro(practice(20, LendsAt.START), "18:20"))).isEqualTo(15);
        assertThat(minutes(micro(practice(20, LendsAt.START), "18:21"))).isEqualTo(35);
        assertThat(minutes(micro(practice(14, LendsAt.START), "18:15"))).isEqualTo(35);
    }

    /** The last 20 minutes: from 19:05 to 19:25. */
    @Test
    void the_end_may_be_lent_as_well() {
        assertThat(minutes(micro(practice(20, LendsAt.END), "19:04"))).isEqualTo(35);
        assertThat(minutes(micro(practice(20, LendsAt.END), "19:05"))).isEqualTo(15);
        assertThat(minutes(micro(practice(20, LendsAt.END), "19:10"))).isEqualTo(15);
        assertThat(minutes(micro(practice(20, LendsAt.END), "19:11"))).isEqualTo(35);
    }

    @Test
    void only_micro_doses_of_the_practices_own_groups_are_lent_to() {
        Squad full = practice(70, LendsAt.START)
                .placed("acceleration", "2027-03-02T18:15")
                .dose(Dose.REDUCED);
        assertThat(minutes(full)).isEqualTo(45);
        Squad others = practice(20, LendsAt.START)
                .group("juniors")
                .placed("acceleration", "2027-03-02T18:15")
                .dose(Dose.MICRO)
                .of("juniors");
        assertThat(minutes(others)).isEqualTo(35);
    }

    @Test
    void what_is_lent_is_in_nobodys_way() {
        assertThat(micro(practice(20, LendsAt.START), "18:15").found("one-place-at-a-time"))
                .isEmpty();
        assertThat(micro(practice(20, LendsAt.START), "18:21").found("one-place-at-a-time"))
                .containsExactly(must(-56, 0));
    }

    /** Its 15 minutes at RPE 5 stand where 15 of practice at RPE 5 stood; strength at RPE 7 weighs 30 AU more. */
    @Test
    void its_minutes_come_off_the_practices_load() {
        assertThat(load(practice(20, LendsAt.START))).isEqualTo(425);
        assertThat(load(micro(practice(20, LendsAt.START), "18:15"))).isEqualTo(425);
        Squad strength = practice(20, LendsAt.START)
                .placed("full-body-strength", "2027-03-02T18:15")
                .dose(Dose.MICRO);
        assertThat(load(strength)).isEqualTo(455);
        // Beside the practice, not in it: 15 minutes and the 10 that are left of the warm-up of a first sprint.
        assertThat(load(micro(practice(20, LendsAt.START), "18:21"))).isEqualTo(550);
    }

    /** The weights room is eight minutes away: there and back they must lie in the lent minutes too. */
    @Test
    void the_way_to_another_place_lies_in_the_lent_minutes() {
        assertThat(inTheWeightsRoom("18:23", 31).found("one-place-at-a-time")).isEmpty();
        assertThat(inTheWeightsRoom("18:22", 31).found("one-place-at-a-time")).containsExactly(must(7, 8));
        assertThat(inTheWeightsRoom("18:24", 31).found("one-place-at-a-time")).containsExactly(must(7, 8));
        assertThat(inTheWeightsRoom("18:23", 30).found("one-place-at-a-time")).containsExactly(must(7, 8));
    }

    /** From the last minutes of practice, 19:05 to 19:25, nobody comes back to it. */
    @Test
    void the_way_back_is_nobodys_where_practice_is_over() {
        assertThat(afterPractice("19:10").found("one-place-at-a-time")).isEmpty();
        assertThat(afterPractice("19:09").found("one-place-at-a-time")).containsExactly(must(4, 5));
    }

    private static Squad afterPractice(String start) {
        return practice(20, LendsAt.END)
                .transfer("turf-pitch", "weights-room", 5)
                .placed("full-body-strength", "2027-03-02T" + start)
                .dose(Dose.MICRO);
    }

    private static Squad inTheWeightsRoom(String start, int lent) {
        return practice(lent, LendsAt.START)
                .transfer("turf-pitch", "weights-room", 8)
                .placed("full-body-strength", "2027-03-02T" + start)
                .dose(Dose.MICRO);
    }

    /** The pitch is full with the practice, and shut for all others. */
    @Test
    void a_guest_of_the_practice_takes_no_room_and_needs_no_open_door() {
        Squad guest = micro(
                practice(20, LendsAt.START)
                        .room("turf-pitch", 1, null)
                        .closed("turf-pitch", "2027-03-02T17:00", "2027-03-02T20:00"),
                "18:15");
        assertThat(guest.found("facility-room")).isEmpty();
        assertThat(guest.found("facility-open")).isEmpty();
        Squad alone = micro(
                practice(20, LendsAt.START)
                        .room("turf-pitch", 1, null)
                        .closed("turf-pitch", "2027-03-02T17:00", "2027-03-02T20:00"),
                "18:21");
        assertThat(alone.found("facility-room")).hasSize(1);
        assertThat(alone.found("facility-open")).containsExactly(must(35, 0));
    }

    /** Practice (order 3) before sprinting (order 1) costs 8 points (expert proposal), but not where it lends its start. */
    @Test
    void a_practice_that_lends_its_start_lets_the_other_go_first() {
        assertThat(micro(practice(20, LendsAt.START), "18:15").found("freshest-first"))
                .isEmpty();
        assertThat(micro(practice(20, LendsAt.END), "19:05").found("freshest-first"))
                .containsExactly(want(8, 3, 1));
    }

    /** Practice's warm-up is the one just before a session that follows it, whatever was lent. */
    @Test
    void what_is_lent_is_passed_over_where_warm_ups_are_shared() {
        Squad without = practice(20, LendsAt.END).placed("tempo-run", "2027-03-02T19:40");
        Squad with = micro(practice(20, LendsAt.END).placed("tempo-run", "2027-03-02T19:40"), "19:05");
        assertThat(load(with)).isEqualTo(load(without));
    }

    @Test
    void a_whole_practice_may_be_lent_and_weighs_nothing_then() {
        Squad whole = practice(70, LendsAt.START);
        for (String start : List.of("18:15", "18:30", "18:45", "19:00")) {
            micro(whole, start);
        }
        // 85 minutes of practice at RPE 5 less 60, and 60 of acceleration at RPE 5.
        assertThat(load(whole)).isEqualTo(425);
    }

    /** Six quarters of an hour in 70 minutes, and a warm-up shared with what went before. */
    @Test
    void a_practice_of_which_more_is_lent_than_it_has_weighs_nothing_still() {
        Squad before = squad().placed("tempo-run", "2027-03-02T17:15");
        Squad practice = practice(70, LendsAt.START).placed("tempo-run", "2027-03-02T17:15");
        for (String start : List.of("18:15", "18:30", "18:45", "19:00", "19:05", "19:10")) {
            micro(practice, start);
        }
        assertThat(load(practice)).isEqualTo(load(before) + 6 * 75);
    }

    /** An extra session with minutes of its own: all of them are main part, and are still when the plan is read again. */
    @Test
    void minutes_given_to_an_extra_session_are_its_main_part() {
        assertThat(minutes(micro(practice(20, LendsAt.START), "18:15").lasting(20)))
                .isEqualTo(20);
        assertThat(micro(practice(20, LendsAt.START), "18:15").lasting(20).found("one-place-at-a-time"))
                .isEmpty();
        assertThat(micro(practice(20, LendsAt.START), "18:15").lasting(21).found("one-place-at-a-time"))
                .containsExactly(must(-36, 0));
    }

    /** The grid is an hour: the first start that fits is offered all the same, for each place with its way. */
    @Test
    void the_first_start_that_fits_is_an_option_off_the_grid() {
        assertThat(practiceIsAllTheTimeThereIs(31).proposed(2_000).placements())
                .extracting(placement -> placement.start().toString())
                .containsExactly("2027-03-02T18:23");
        assertThat(practiceIsAllTheTimeThereIs(30).proposed(2_000).placements()).isEmpty();
    }

    private static Squad practiceIsAllTheTimeThereIs(int lent) {
        return practice(lent, LendsAt.START)
                .transfer("turf-pitch", "weights-room", 8)
                .window("18:00", "19:25", Weekday.TUE)
                .aim("full-body-strength", 1, 1, 1)
                .doses(Dose.MICRO)
                .microCounts();
    }
}
