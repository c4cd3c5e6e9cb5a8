package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Share;

/** What comes back after a break, what is neglected, how a week's sessions are spread, and how a skill is learnt. */
class ExposureAndLearningTest {
    private static final String RETURN = "return-dose";
    private static final String NEGLECTED = "pathway-neglected";
    private static final String SPREAD = "even-spread";
    private static final String LEARNER = "learner-frequency";

    /** The squad sprints as an aim on Monday 1 March, last on a day before. */
    private static Squad backAfter(String date) {
        return squad().aim("max-velocity", 0, 1, 1)
                .done("max-velocity", date + "T10:00")
                .placed("max-velocity", "2027-03-01T10:00");
    }

    /** Two weeks and half the volume: expert proposal. */
    @Test
    void return_dose_after_more_than_two_weeks_at_most_half() {
        assertThat(backAfter("2027-02-15").found(RETURN)).isEmpty();
        assertThat(backAfter("2027-02-14").found(RETURN)).containsExactly(want(12, 1, 0.5));
        assertThat(backAfter("2027-02-14").dose(Dose.REDUCED).found(RETURN)).containsExactly(want(12, 0.67, 0.5));
        assertThat(backAfter("2027-02-14").dose(Dose.MICRO).found(RETURN)).isEmpty();
        assertThat(backAfter("2027-02-14").number(RETURN, "share", 1).found(RETURN))
                .isEmpty();
        assertThat(backAfter("2027-02-14").pinned().number(RETURN, "days", 20).found(RETURN))
                .isEmpty();
    }

    @Test
    void return_dose_without_an_exposure_before_nothing_is_known() {
        assertThat(squad().aim("max-velocity", 0, 1, 1)
                        .placed("max-velocity", "2027-03-07T10:00")
                        .found(RETURN))
                .isEmpty();
        Squad month = squad().days(21).aim("max-velocity", 0, 1, 1).placed("max-velocity", "2027-03-17T10:00");
        assertThat(month.found(RETURN)).isEmpty();
        month.placed("max-velocity", "2027-03-02T10:00");
        assertThat(month.found(RETURN)).containsExactly(want(12, 1, 0.5));
        assertThat(squad().done("max-velocity", "2027-02-10T10:00")
                        .placed("max-velocity", "2027-03-01T10:00")
                        .found(RETURN))
                .isEmpty();
    }

    /** Who was kept from sprinting by a clinician comes back as carefully as anybody. */
    @Test
    void return_dose_holds_after_a_restriction_too_and_for_those_concerned() {
        Squad injured = backAfter("2027-02-22")
                .done("max-velocity", "2027-02-12T10:00")
                .athlete("ash")
                .restricted(RestrictionLimit.NONE, "2027-02-15", "2027-02-28", Pathway.MAX_VELOCITY_SPRINT);
        assertThat(injured.found(RETURN)).isEmpty();
        Squad missed = squad().aim("max-velocity", 0, 1, 1)
                .athlete("ash")
                .restricted(RestrictionLimit.NONE, "2027-02-15", "2027-02-28", Pathway.MAX_VELOCITY_SPRINT)
                .done("max-velocity", "2027-02-12T10:00")
                .done("max-velocity", "2027-02-22T10:00")
                .without("ash")
                .placed("max-velocity", "2027-03-01T10:00");
        assertThat(missed.found(RETURN)).containsExactly(want(1.2, 1, 0.5));
    }

    /** The squad lifts as an aim, last on a day before Monday 1 March, and next on Wednesday. */
    private static Squad liftedLast(String date) {
        return squad().aim("heavy-lower-knee", 0, 1, 1)
                .done("heavy-lower-knee", date + "T10:00")
                .placed("heavy-lower-knee", "2027-03-03T10:00");
    }

    /** Ten days: expert proposal. */
    @Test
    void pathway_neglected_each_day_beyond_ten_costs_two() {
        assertThat(liftedLast("2027-02-21").found(NEGLECTED)).isEmpty();
        assertThat(liftedLast("2027-02-20").found(NEGLECTED)).containsExactly(want(2, 11, 10));
        assertThat(liftedLast("2027-02-19").dose(Dose.MICRO).pinned().found(NEGLECTED))
                .containsExactly(want(4, 12, 10));
        assertThat(liftedLast("2027-02-19")
                        .done("weightlifting-power", "2027-02-25T10:00")
                        .found(NEGLECTED))
                .isEmpty();
    }

    @Test
    void pathway_neglected_without_history_from_the_first_day_and_to_the_last() {
        assertThat(squad().days(11).aim("heavy-lower-knee", 0, 1, 1).found(NEGLECTED))
                .isEmpty();
        assertThat(squad().days(12).aim("heavy-lower-knee", 0, 1, 1).found(NEGLECTED))
                .containsExactly(want(2, 11, 10));
        Squad two = squad().days(12).aim("lower-hypertrophy", 0, 1, 1);
        assertThat(two.found(NEGLECTED)).containsExactly(want(2, 11, 10), want(2, 11, 10));
    }

    @Test
    void pathway_neglected_counts_dates_when_the_clocks_change() {
        Squad squad = squad().week("2027-03-22")
                .days(14)
                .aim("heavy-lower-knee", 0, 1, 1)
                .placed("heavy-lower-knee", "2027-03-22T06:00")
                .placed("heavy-lower-knee", "2027-04-01T23:00");
        assertThat(squad.found(NEGLECTED)).isEmpty();
    }

    @Test
    void pathway_neglected_a_fixture_played_in_full_meets_its_qualities() {
        Squad played = liftedLast("2027-02-19").heads(1).athlete("ash").done("fixture", "2027-02-25T15:00");
        assertThat(played.person("ash", 61, null).found(NEGLECTED)).isEmpty();
        Squad part = liftedLast("2027-02-19").heads(1).athlete("ash").done("fixture", "2027-02-25T15:00");
        assertThat(part.person("ash", 60, null).found(NEGLECTED)).containsExactly(want(4, 12, 10));
        Squad coming = squad().days(12).aim("heavy-lower-knee", 0, 1, 1).fixture("cup-tie", "2027-03-06T15:00");
        assertThat(coming.found(NEGLECTED)).containsExactly(want(2, 11, 10));
    }

    @Test
    void pathway_neglected_of_aims_for_all_and_not_of_maximal_sprinting() {
        assertThat(squad().days(14)
                        .aim("top-up-run", 0, 1, 1)
                        .whom(Share.NOT_PLAYED)
                        .aim("max-velocity", 0, 1, 1)
                        .found(NEGLECTED))
                .isEmpty();
    }

    @Test
    void pathway_neglected_rests_where_a_clinician_bars_it() {
        Squad barred =
                squad().days(14).heads(1).aim("heavy-lower-knee", 0, 1, 1).athlete("ash");
        barred.restricted(RestrictionLimit.LIGHT, "2027-03-05", "2027-03-05", Pathway.KNEE_DOMINANT);
        assertThat(barred.found(NEGLECTED)).isEmpty();
    }

    private static Squad tempoRuns(String... starts) {
        Squad squad = squad().aim("tempo-run", 0, 3, 3);
        for (String start : starts) {
            squad.placed("tempo-run", start);
        }
        return squad;
    }

    /** Common practice, no source; the price is an expert proposal. */
    @Test
    void even_spread_a_quarter_of_a_point_for_each_hour_too_close() {
        assertThat(tempoRuns("2027-03-01T10:00", "2027-03-04T10:00").found(SPREAD))
                .isEmpty();
        assertThat(tempoRuns("2027-03-04T08:00", "2027-03-01T10:00").found(SPREAD))
                .containsExactly(want(0.5, 70, 72));
        assertThat(tempoRuns("2027-03-02T10:00", "2027-03-04T10:00").found(SPREAD))
                .containsExactly(want(6, 48, 72));
        assertThat(tempoRuns("2027-03-01T10:00", "2027-03-03T10:00", "2027-03-05T10:00")
                        .found(SPREAD))
                .isEmpty();
        assertThat(tempoRuns("2027-03-01T10:00", "2027-03-02T10:00", "2027-03-03T10:00")
                        .pinned()
                        .found(SPREAD))
                .containsExactly(want(6, 24, 48), want(6, 24, 48));
    }

    @Test
    void even_spread_goes_by_the_clock_and_by_the_days_of_a_short_week() {
        Squad clocks = squad().week("2027-03-22")
                .aim("tempo-run", 0, 2, 2)
                .placed("tempo-run", "2027-03-25T10:00")
                .placed("tempo-run", "2027-03-28T10:00");
        assertThat(clocks.found(SPREAD)).isEmpty();
        assertThat(tempoRuns("2027-03-01T10:00", "2027-03-03T10:00").days(5).found(SPREAD))
                .isEmpty();
        assertThat(tempoRuns("2027-03-01T10:00", "2027-03-03T09:00").days(5).found(SPREAD))
                .containsExactly(want(0.3, 47, 48));
    }

    @Test
    void even_spread_is_not_asked_of_practice_and_recovery_nor_over_two_weeks() {
        Squad practice = squad().days(14)
                .aim("team-practice", 0, 2, 2)
                .placed("team-practice", "2027-03-01T10:00")
                .placed("team-practice", "2027-03-02T10:00")
                .aim("mobility", 0, 2, 2)
                .placed("mobility", "2027-03-01T14:00")
                .placed("mobility", "2027-03-02T14:00")
                .aim("tempo-run", 0, 1, 1)
                .placed("tempo-run", "2027-03-07T10:00")
                .placed("tempo-run", "2027-03-08T10:00");
        assertThat(practice.found(SPREAD)).isEmpty();
    }

    private static Squad lessons(int days) {
        Squad squad = squad().aim("technique", 0, 2, 7).learning();
        for (int day = 1; day <= days; day++) {
            squad.placed("technique", "2027-03-0" + day + "T10:00");
        }
        return squad;
    }

    /** Two to four times a week: expert proposal, grounded in Shea et al. 2000, Hum Mov Sci 19:737-760. */
    @Test
    void learner_frequency_two_to_four_times_a_week() {
        assertThat(lessons(0).found(LEARNER)).containsExactly(want(20, 0, 2));
        assertThat(lessons(1).found(LEARNER)).containsExactly(want(10, 1, 2));
        assertThat(lessons(2).found(LEARNER)).isEmpty();
        assertThat(lessons(4).found(LEARNER)).isEmpty();
        assertThat(lessons(5).found(LEARNER)).containsExactly(want(10, 5, 4));
        assertThat(lessons(1)
                        .commitment("drills", "technique", "2027-03-04T10:00")
                        .found(LEARNER))
                .isEmpty();
        assertThat(squad().aim("technique", 0, 2, 7).found(LEARNER)).isEmpty();
    }

    @Test
    void learner_frequency_is_shorter_in_a_short_week() {
        assertThat(lessons(1).days(4).found(LEARNER)).isEmpty();
        assertThat(lessons(0).days(4).found(LEARNER)).containsExactly(want(10, 0, 1));
        assertThat(lessons(3).days(4).found(LEARNER)).isEmpty();
        assertThat(lessons(4).days(4).found(LEARNER)).containsExactly(want(10, 4, 3));
        assertThat(lessons(0).days(3).found(LEARNER)).isEmpty();
    }

    /** Expert proposal. */
    @Test
    void learner_frequency_a_lesson_comes_before_anything_tiring() {
        assertThat(lessons(2).placed("top-up-run", "2027-03-01T09:00").found(LEARNER))
                .containsExactly(want(8, 1, 0));
        assertThat(lessons(2)
                        .placed("acceleration", "2027-03-01T09:00")
                        .placed("top-up-run", "2027-03-01T08:00")
                        .found(LEARNER))
                .containsExactly(want(8, 1, 0));
        assertThat(lessons(2)
                        .placed("top-up-run", "2027-03-01T10:00")
                        .placed("heavy-lower-knee", "2027-03-02T08:00")
                        .placed("primer", "2027-03-02T07:00")
                        .found(LEARNER))
                .isEmpty();
        assertThat(lessons(2).fixture("cup-tie", "2027-03-02T07:00").pinned().found(LEARNER))
                .containsExactly(want(8, 1, 0));
    }

    @Test
    void learner_frequency_a_second_lesson_on_one_day_costs_eight() {
        assertThat(lessons(2).placed("technique", "2027-03-02T16:00").found(LEARNER))
                .containsExactly(want(8, 2, 1));
    }

    /** That nobody can be in both is another rule's; neither is the second. Common practice, no source. */
    @Test
    void learner_frequency_two_lessons_of_one_start_are_not_one_after_the_other() {
        assertThat(lessons(2).placed("technique", "2027-03-02T10:00").found(LEARNER))
                .isEmpty();
    }
}
