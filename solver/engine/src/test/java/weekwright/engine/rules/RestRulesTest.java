package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;

/** Long nights, days running, lifting and endurance apart. */
class RestRulesTest {
    private static final String NIGHT = "night-rest-margin";
    private static final String RUNNING = "six-days-running";
    private static final String APART = "strength-endurance-apart";

    /** Technique from 21:00 to 21:30, and mobility the next morning. */
    private static Squad untilMorning(String start) {
        return squad().placed("technique", "2027-03-02T21:00").placed("mobility", start);
    }

    /** 10 h: expert proposal. */
    @Test
    void night_rest_margin_ten_hours_and_three_points_an_hour() {
        assertThat(untilMorning("2027-03-03T07:30").found(NIGHT)).isEmpty();
        assertThat(untilMorning("2027-03-03T07:15").found(NIGHT)).containsExactly(want(0.8, 9.75, 10));
        assertThat(untilMorning("2027-03-03T06:00").found(NIGHT)).containsExactly(want(4.5, 8.5, 10));
        assertThat(untilMorning("2027-03-03T04:30").found(NIGHT)).containsExactly(want(9, 7, 10));
        assertThat(untilMorning("2027-03-04T06:00").found(NIGHT)).isEmpty();
    }

    @Test
    void night_rest_margin_less_than_nothing_is_nothing() {
        Squad overlapping = squad().placed("technique", "2027-03-02T23:45").placed("mobility", "2027-03-03T00:09");
        assertThat(overlapping.found(NIGHT)).containsExactly(want(30, -0.1, 10));
    }

    @Test
    void night_rest_margin_is_not_judged_where_both_are_fixed() {
        Squad both = squad().commitment("late", "team-practice", "2027-03-02T21:00")
                .commitment("early", "team-practice", "2027-03-03T06:00");
        assertThat(both.found(NIGHT)).isEmpty();
        Squad one =
                squad().commitment("late", "team-practice", "2027-03-02T21:00").placed("mobility", "2027-03-03T06:00");
        assertThat(one.found(NIGHT)).containsExactly(want(6, 8, 10));
        Squad history = squad().done("tempo-run", "2027-02-28T21:00")
                .placed("mobility", "2027-03-01T06:00")
                .pinned();
        assertThat(history.found(NIGHT)).containsExactly(want(6, 8, 10));
    }

    @Test
    void night_rest_margin_counts_elapsed_hours_when_the_clocks_change() {
        Squad forward = squad().week("2027-03-22").placed("technique", "2027-03-27T21:30");
        assertThat(forward.placed("mobility", "2027-03-28T08:45").found(NIGHT)).containsExactly(want(0.8, 9.75, 10));
        assertThat(squad().week("2027-03-22")
                        .placed("mobility", "2027-03-28T09:00")
                        .placed("technique", "2027-03-27T21:30")
                        .found(NIGHT))
                .isEmpty();
    }

    private static Squad techniqueOn(int... marchDays) {
        Squad squad = squad().days(14);
        for (int day : marchDays) {
            squad.placed("technique", String.format(java.util.Locale.ROOT, "2027-03-%02dT10:00", day));
        }
        return squad;
    }

    /** Expert proposal. */
    @Test
    void six_days_running_a_seventh_without_a_free_day_costs_twelve() {
        assertThat(techniqueOn(1, 2, 3, 4, 5, 6).found(RUNNING)).isEmpty();
        assertThat(techniqueOn(3, 4, 5, 6, 7, 8, 9).found(RUNNING)).containsExactly(want(12, 7, 6));
        assertThat(techniqueOn(3, 4, 5, 6, 7, 8, 9, 10).found(RUNNING)).containsExactly(want(12, 7, 6), want(12, 7, 6));
        assertThat(techniqueOn(3, 4, 5, 7, 8, 9)
                        .placed("mobility", "2027-03-06T10:00")
                        .found(RUNNING))
                .isEmpty();
        assertThat(techniqueOn(1, 2, 3, 4).number(RUNNING, "days", 3).found(RUNNING))
                .containsExactly(want(12, 4, 3));
    }

    @Test
    void six_days_running_the_history_and_fixtures_count() {
        Squad after = techniqueOn(1, 2, 3, 4, 5).done("tempo-run", "2027-02-28T10:00");
        assertThat(after.found(RUNNING)).isEmpty();
        assertThat(after.fixture("cup-tie", "2027-03-06T15:00").found(RUNNING)).containsExactly(want(12, 7, 6));
    }

    @Test
    void six_days_running_is_told_where_no_day_would_be_free_without_us() {
        Squad fixed = squad();
        for (int day = 1; day <= 7; day++) {
            fixed.commitment("practice-" + day, "team-practice", "2027-03-0" + day + "T18:00");
        }
        assertThat(fixed.found(RUNNING)).containsExactly(told(7, 6));
        assertThat(fixed.placed("technique", "2027-03-04T10:00").found(RUNNING)).containsExactly(told(7, 6));
        Squad six = squad();
        for (int day = 1; day <= 6; day++) {
            six.commitment("practice-" + day, "team-practice", "2027-03-0" + day + "T18:00");
        }
        assertThat(six.placed("technique", "2027-03-07T10:00").pinned().found(RUNNING))
                .containsExactly(want(12, 7, 6));
    }

    /** Lifting from 10:00 to 10:45, and intervals later that day. */
    private static Squad liftingAndIntervals(String start) {
        return squad().placed("upper-strength", "2027-03-02T10:00").placed("aerobic-intervals", start);
    }

    /** 3 h: expert proposal, grounded in Schumann et al. 2022, Sports Med 52:601-612. */
    @Test
    void strength_endurance_apart_three_hours_and_two_points_an_hour() {
        assertThat(liftingAndIntervals("2027-03-02T13:45").found(APART)).isEmpty();
        assertThat(liftingAndIntervals("2027-03-02T13:30").found(APART)).containsExactly(want(0.5, 2.75, 3));
        assertThat(liftingAndIntervals("2027-03-02T10:45").found(APART)).containsExactly(want(6, 0, 3));
        assertThat(liftingAndIntervals("2027-03-02T10:30").found(APART)).containsExactly(want(6, -0.25, 3));
        assertThat(liftingAndIntervals("2027-03-02T08:20").found(APART)).containsExactly(want(4, 1, 3));
        assertThat(liftingAndIntervals("2027-03-03T00:00").found(APART)).isEmpty();
    }

    /** 6 h: expert proposal, grounded in Robineau et al. 2016, JSCR 30:672-683. */
    @Test
    void strength_endurance_apart_six_hours_where_the_lifting_is_for_power() {
        Squad power = squad().aim("heavy-lower-knee", 0, 1, 1)
                .power()
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .placed("aerobic-intervals", "2027-03-02T16:30");
        assertThat(power.found(APART)).containsExactly(want(1, 5.5, 6));
    }

    @Test
    void strength_endurance_apart_hard_endurance_only_and_sprinting_is_none() {
        Squad lifting = squad().placed("upper-strength", "2027-03-02T10:00");
        assertThat(lifting.placed("tempo-run", "2027-03-02T11:00")
                        .placed("repeated-sprint", "2027-03-02T12:00")
                        .placed("speed-endurance", "2027-03-02T13:00")
                        .found(APART))
                .isEmpty();
        assertThat(squad().placed("hamstring-eccentric", "2027-03-02T10:00")
                        .placed("aerobic-intervals", "2027-03-02T11:00")
                        .found(APART))
                .isEmpty();
    }

    @Test
    void strength_endurance_apart_is_not_judged_between_fixed_things() {
        Squad one = squad().commitment("running-club", "aerobic-intervals", "2027-03-02T12:00")
                .placed("upper-strength", "2027-03-02T10:15");
        assertThat(one.found(APART)).containsExactly(want(4, 1, 3));
        Squad both = squad().commitment("running-club", "aerobic-intervals", "2027-03-02T12:00")
                .commitment("lifting-club", "upper-strength", "2027-03-02T10:00");
        assertThat(both.found(APART)).isEmpty();
    }
}
