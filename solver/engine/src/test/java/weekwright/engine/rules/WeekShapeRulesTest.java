package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.key;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Amount;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.FixtureWeight;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.RestrictionLimit;

/**
 * High, middle, low and free days. Lower hypertrophy makes a high day (8.0), small-sided games a middle one (6.0). Expert
 * proposals, unless said otherwise.
 */
class WeekShapeRulesTest {
    private static Squad high(String... dates) {
        Squad squad = squad().days(14);
        for (String date : dates) {
            squad.placed("lower-hypertrophy", date + "T10:00");
        }
        return squad;
    }

    @Test
    void three_high_days_two_may_follow_one_another() {
        assertThat(high("2027-03-01", "2027-03-02", "2027-03-04").found("three-high-days"))
                .isEmpty();
        assertThat(high("2027-03-01", "2027-03-02", "2027-03-03").found("three-high-days"))
                .containsExactly(want(24, 3, 2));
        assertThat(high("2027-03-01", "2027-03-02", "2027-03-03", "2027-03-04").found("three-high-days"))
                .containsExactly(want(24, 3, 2), want(24, 3, 2));
    }

    @Test
    void four_high_days_never_follow_one_another() {
        assertThat(high("2027-03-01", "2027-03-02", "2027-03-03", "2027-03-05").found("four-high-days"))
                .isEmpty();
        assertThat(high("2027-03-05", "2027-03-06", "2027-03-07", "2027-03-08").found("four-high-days"))
                .containsExactly(must(4, 3));
    }

    /** Pushing and pulling heavily make a high day where strength is the sport: 6.0 + 0.15 x 6.0. */
    @Test
    void four_high_days_a_day_for_the_upper_body_only_does_not_count() {
        Squad lifters = high("2027-03-01", "2027-03-02", "2027-03-04")
                .kind(GroupKind.STRENGTH)
                .placed("heavy-upper-push", "2027-03-03T10:00")
                .placed("heavy-upper-pull", "2027-03-03T11:00");
        assertThat(lifters.found("four-high-days")).isEmpty();
        assertThat(lifters.found("three-high-days")).isEmpty();
        lifters.placed("heavy-lower-knee", "2027-03-03T12:00");
        assertThat(lifters.found("four-high-days")).containsExactly(must(4, 3));
    }

    @Test
    void three_high_days_a_fixture_is_one_of_them_for_those_who_play() {
        Squad squad = high("2027-03-05", "2027-03-07").fixture("cup-tie", "2027-03-06T15:00");
        assertThat(squad.found("three-high-days")).containsExactly(want(24, 3, 2));
        assertThat(squad.athlete("ash").expecting("ash", 0).found("three-high-days"))
                .containsExactly(want(21.6, 3, 2));
    }

    @Test
    void three_high_days_history_counts_and_what_comes_after_the_plan() {
        Squad history = high("2027-03-01")
                .done("lower-hypertrophy", "2027-02-27T10:00")
                .done("lower-hypertrophy", "2027-02-28T10:00");
        assertThat(history.found("three-high-days")).containsExactly(want(24, 3, 2));
        assertThat(history.pinned().found("three-high-days")).containsExactly(want(24, 3, 2));
        Squad toCome = high("2027-03-14")
                .commitment("contact", "contact-practice", "2027-03-15T18:00")
                .commitment("contact-too", "contact-practice", "2027-03-16T18:00");
        assertThat(toCome.found("three-high-days")).containsExactly(want(24, 3, 2));
    }

    @Test
    void four_high_days_history_counts() {
        Squad squad = high("2027-03-01")
                .done("lower-hypertrophy", "2027-02-26T10:00")
                .done("lower-hypertrophy", "2027-02-27T10:00")
                .done("lower-hypertrophy", "2027-02-28T10:00");
        assertThat(squad.found("four-high-days")).containsExactly(must(4, 3));
    }

    /** Hard practice is 7 points for body and nerves. */
    private static Squad hardPractices(String... dates) {
        Squad squad = squad();
        for (String date : dates) {
            squad.practice("practice-" + date, date + "T18:00").effort(Effort.HARD);
        }
        return squad;
    }

    @Test
    void four_high_days_that_nobody_here_placed_are_told() {
        Squad squad = hardPractices("2027-03-01", "2027-03-02", "2027-03-03", "2027-03-04");
        assertThat(squad.found("four-high-days")).containsExactly(told(4, 3));
        assertThat(squad.found("three-high-days")).containsExactly(told(3, 2), told(3, 2));
        // Lifting on one of them makes it no worse; on the only day that was not high it does.
        assertThat(squad.placed("lower-hypertrophy", "2027-03-02T10:00").found("four-high-days"))
                .containsExactly(told(4, 3));
        Squad three = hardPractices("2027-03-01", "2027-03-02", "2027-03-04");
        assertThat(three.placed("lower-hypertrophy", "2027-03-03T10:00").found("four-high-days"))
                .containsExactly(must(4, 3));
    }

    @Test
    void three_high_days_go_by_dates_when_the_clocks_change() {
        Squad squad = squad().week("2027-03-22").days(14);
        for (String date : List.of("2027-03-27", "2027-03-28", "2027-03-29")) {
            squad.placed("lower-hypertrophy", date + "T23:30");
        }
        assertThat(squad.found("three-high-days")).containsExactly(want(24, 3, 2));
    }

    @Test
    void three_and_four_high_days_their_numbers_can_be_changed() {
        Squad squad = high("2027-03-01", "2027-03-02", "2027-03-03");
        assertThat(squad.number("three-high-days", "days", 2).found("three-high-days"))
                .containsExactly(want(24, 2, 1), want(24, 2, 1));
        assertThat(squad.groupNumber("three-high-days", "days", 4).found("three-high-days"))
                .isEmpty();
        assertThat(squad.number("four-high-days", "days", 3).found("four-high-days"))
                .containsExactly(must(3, 2));
        Squad dearer = high("2027-03-01", "2027-03-02", "2027-03-03").number("three-high-days", "points", 30);
        assertThat(dearer.found("three-high-days")).containsExactly(want(30, 3, 2));
    }

    @Test
    void three_high_days_concern_those_who_had_them() {
        Squad squad = high("2027-03-01", "2027-03-02", "2027-03-03")
                .athlete("ash")
                .restricted(RestrictionLimit.LIGHT, "2027-03-03", "2027-03-03", Pathway.KNEE_DOMINANT);
        assertThat(squad.found("three-high-days")).containsExactly(want(21.6, 3, 2));
        assertThat(squad.judged().only("three-high-days").heads()).isEqualTo(9);
    }

    /** Technique from Monday to Saturday. */
    private static Squad sixDays() {
        Squad squad = squad();
        for (int day = 1; day <= 6; day++) {
            squad.placed("technique", "2027-03-0" + day + "T10:00");
        }
        return squad;
    }

    /** FIFA statement with player unions, July 2025 (press reports only); NCAA Division I, Bylaw 17.1.7.4 (secondary pages only). */
    @Test
    void free_day_one_in_each_week() {
        assertThat(sixDays().found("free-day")).isEmpty();
        assertThat(sixDays().placed("technique", "2027-03-07T10:00").found("free-day"))
                .containsExactly(must(0, 1));
        assertThat(sixDays().practice("extra", "2027-03-07T18:00").found("free-day"))
                .containsExactly(must(0, 1));
        assertThat(sixDays().fixture("cup-tie", "2027-03-07T15:00").found("free-day"))
                .containsExactly(must(0, 1));
    }

    @Test
    void free_day_optional_recovery_and_what_only_takes_time_do_not_spoil_it() {
        Squad squad = sixDays()
                .placed("mobility", "2027-03-07T10:00")
                .placed("recovery", "2027-03-07T11:00")
                .commitment("lecture", null, "2027-03-07T14:00");
        assertThat(squad.found("free-day")).isEmpty();
    }

    @Test
    void free_day_a_way_of_more_than_two_hours_spoils_it() {
        // For a kick-off on Monday at 01:00 the coach leaves on Sunday, warm-up apart.
        assertThat(sixDays()
                        .fixture("away-tie", "2027-03-08T01:00")
                        .travelling(120, 0)
                        .found("free-day"))
                .isEmpty();
        assertThat(sixDays()
                        .fixture("away-tie", "2027-03-08T01:00")
                        .travelling(121, 0)
                        .found("free-day"))
                .containsExactly(must(0, 1));
        assertThat(sixDays()
                        .fixture("away-tie", "2027-03-08T01:00")
                        .travelling(121, 0)
                        .number("free-day", "travelMinutes", 180)
                        .found("free-day"))
                .isEmpty();
    }

    @Test
    void free_day_is_asked_of_each_whole_week() {
        Squad squad = sixDays().days(14).placed("technique", "2027-03-07T10:00");
        assertThat(squad.found("free-day")).containsExactly(must(0, 1));
        assertThat(sixDays().days(6).found("free-day")).isEmpty();
    }

    @Test
    void free_day_each_athlete_has_one() {
        Squad squad = sixDays()
                .quorum(1)
                .athlete("ash")
                .commitment("club", "technique", "2027-03-07T10:00")
                .only("ash");
        assertThat(squad.found("free-day")).containsExactly(must(0, 1));
        assertThat(squad.judged().only("free-day").heads()).isEqualTo(1);
        assertThat(squad.level("free-day", RuleLevel.WANT).found("free-day")).containsExactly(want(2.4, 0, 1));
    }

    @Test
    void free_day_is_told_where_others_leave_none_and_more_can_be_asked() {
        Squad squad = squad();
        for (int day = 1; day <= 7; day++) {
            squad.practice("practice-" + day, "2027-03-0" + day + "T18:00");
        }
        assertThat(squad.found("free-day")).containsExactly(told(0, 1));
        assertThat(squad.placed("technique", "2027-03-01T10:00").found("free-day"))
                .containsExactly(told(0, 1));
        Squad six = squad().placed("technique", "2027-03-07T10:00");
        for (int day = 1; day <= 6; day++) {
            six.practice("practice-" + day, "2027-03-0" + day + "T18:00");
        }
        assertThat(six.found("free-day"))
                .as("others leave the one that there must be")
                .containsExactly(must(0, 1));
        assertThat(sixDays().number("free-day", "days", 2).found("free-day")).containsExactly(must(1, 2));
    }

    private static List<Amount> highDays(String rule, int least, int target, int most, String... dates) {
        return high(dates).days(7).highDays(least, target, most).found(rule);
    }

    @Test
    void high_days_most_no_more_than_the_coach_allows() {
        assertThat(highDays("high-days-most", 0, 1, 1, "2027-03-01")).isEmpty();
        assertThat(highDays("high-days-most", 0, 1, 1, "2027-03-01", "2027-03-03"))
                .containsExactly(must(2, 1));
        assertThat(highDays("high-days-most", 0, 1, 1, "2027-03-01", "2027-03-03", "2027-03-05"))
                .containsExactly(must(3, 1));
    }

    @Test
    void high_days_most_the_monday_after_is_the_next_weeks() {
        Squad squad = high("2027-03-01")
                .days(7)
                .highDays(0, 1, 1)
                .practice("monday", "2027-03-08T18:00")
                .effort(Effort.HARD);
        assertThat(squad.found("high-days-most")).isEmpty();
    }

    @Test
    void high_days_most_counts_a_fixture_and_only_what_is_placed_breaks_it() {
        Squad squad = high("2027-03-01").days(7).highDays(0, 1, 1).fixture("cup-tie", "2027-03-06T15:00");
        assertThat(squad.found("high-days-most")).containsExactly(must(2, 1));
        Squad fixed = hardPractices("2027-03-01", "2027-03-03").highDays(0, 1, 1);
        assertThat(fixed.found("high-days-most")).isEmpty();
        assertThat(fixed.placed("lower-hypertrophy", "2027-03-01T10:00").found("high-days-most"))
                .isEmpty();
        assertThat(fixed.placed("heavy-lower-knee", "2027-03-05T10:00").found("high-days-most"))
                .containsExactly(must(3, 1));
    }

    /** Of seven days' numbers a week of four has 4/7: least rounded down, target half up, most up. */
    @Test
    void high_days_most_least_and_target_in_a_short_last_week() {
        Squad two = high("2027-03-01", "2027-03-03").days(4);
        assertThat(two.highDays(3, 3, 3).found("high-days-most")).isEmpty();
        assertThat(two.highDays(0, 1, 1).found("high-days-most")).containsExactly(must(2, 1));
        Squad none = squad().days(4).highDays(3, 3, 3);
        assertThat(none.found("high-days-least")).containsExactly(key(1, 0, 1));
        assertThat(none.found("high-days-target")).containsExactly(want(24, 0, 2));
    }

    @Test
    void high_days_least_each_missing_day_is_one() {
        assertThat(highDays("high-days-least", 2, 2, 3)).containsExactly(key(2, 0, 2));
        assertThat(highDays("high-days-least", 2, 2, 3, "2027-03-01")).containsExactly(key(1, 1, 2));
        assertThat(highDays("high-days-least", 2, 2, 3, "2027-03-01", "2027-03-04"))
                .isEmpty();
        assertThat(squad().found("high-days-least")).isEmpty();
    }

    @Test
    void high_days_least_a_fixture_counts_for_those_who_play() {
        Squad squad = squad().highDays(1, 1, 3).athlete("ash").fixture("cup-tie", "2027-03-06T15:00");
        assertThat(squad.found("high-days-least")).isEmpty();
        assertThat(squad.expecting("ash", 0).found("high-days-least")).containsExactly(key(0.1, 0, 1));
    }

    @Test
    void high_days_least_and_target_are_not_asked_of_whoever_is_under_a_clinician() {
        Squad squad = squad().highDays(1, 1, 3)
                .athlete("ash")
                .restricted(RestrictionLimit.NONE, "2027-03-07", "2027-03-20", Pathway.AEROBIC);
        assertThat(squad.found("high-days-least")).containsExactly(key(0.9, 0, 1));
        assertThat(squad.found("high-days-target")).containsExactly(want(10.8, 0, 1));
        assertThat(squad.heads(1).found("high-days-least")).isEmpty();
        assertThat(squad.found("high-days-target")).isEmpty();
        Squad later = squad().highDays(1, 1, 3)
                .athlete("ash")
                .restricted(RestrictionLimit.NONE, "2027-03-08", "2027-03-20", Pathway.AEROBIC);
        assertThat(later.found("high-days-least")).as("from the Monday after").containsExactly(key(1, 0, 1));
    }

    @Test
    void high_days_least_as_a_want_or_a_must() {
        Squad squad = squad().highDays(2, 2, 3);
        assertThat(squad.level("high-days-least", RuleLevel.WANT).found("high-days-least"))
                .containsExactly(want(48, 0, 2));
        assertThat(squad.level("high-days-least", RuleLevel.MUST).found("high-days-least"))
                .containsExactly(must(0, 2));
        assertThat(squad.level("high-days-least", RuleLevel.TOLD).found("high-days-least"))
                .containsExactly(told(0, 2));
    }

    @Test
    void high_days_target_twelve_for_each_short_and_twenty_four_for_each_over() {
        assertThat(highDays("high-days-target", 0, 2, 5)).containsExactly(want(24, 0, 2));
        assertThat(highDays("high-days-target", 0, 2, 5, "2027-03-01")).containsExactly(want(12, 1, 2));
        assertThat(highDays("high-days-target", 0, 2, 5, "2027-03-01", "2027-03-03"))
                .isEmpty();
        assertThat(highDays("high-days-target", 0, 2, 5, "2027-03-01", "2027-03-03", "2027-03-05"))
                .containsExactly(want(24, 3, 2));
        assertThat(highDays("high-days-target", 0, 2, 5, "2027-03-01", "2027-03-03", "2027-03-05", "2027-03-07"))
                .containsExactly(want(48, 4, 2));
    }

    @Test
    void high_days_target_only_what_is_placed_is_over() {
        Squad fixed = hardPractices("2027-03-01", "2027-03-03", "2027-03-05").highDays(0, 1, 5);
        assertThat(fixed.found("high-days-target")).isEmpty();
        assertThat(fixed.placed("lower-hypertrophy", "2027-03-07T10:00").found("high-days-target"))
                .containsExactly(want(24, 4, 1));
    }

    @Test
    void high_days_target_its_points_can_be_changed() {
        Squad squad = squad().highDays(0, 1, 3).number("high-days-target", "shortPoints", 5);
        assertThat(squad.found("high-days-target")).containsExactly(want(5, 0, 1));
        assertThat(squad.groupNumber("high-days-target", "shortPoints", 7).found("high-days-target"))
                .containsExactly(want(7, 0, 1));
        Squad over = high("2027-03-01", "2027-03-03").days(7).highDays(0, 1, 5);
        assertThat(over.number("high-days-target", "overPoints", 9).found("high-days-target"))
                .containsExactly(want(9, 2, 1));
    }

    private static Squad games(String date) {
        return squad().placed("small-sided-games", date + "T10:00");
    }

    /** Common practice, no source. */
    @Test
    void no_middle_day_a_day_is_high_or_low() {
        assertThat(games("2027-03-02").found("no-middle-day")).containsExactly(want(10, 6, 5.5));
        assertThat(squad().placed("tempo-run", "2027-03-02T10:00").found("no-middle-day"))
                .isEmpty();
        assertThat(high("2027-03-02").found("no-middle-day")).isEmpty();
    }

    /** Practice is 5 AU a minute, and 110 AU are a point: 605 AU are still low, and 715 are high. */
    @Test
    void no_middle_day_the_edges_are_five_and_a_half_and_six_and_a_half() {
        assertThat(practiceOf(121).found("no-middle-day")).isEmpty();
        assertThat(practiceOf(124).found("no-middle-day")).containsExactly(want(10, 5.64, 5.5));
        assertThat(practiceOf(122).found("no-middle-day")).hasSize(1);
        assertThat(practiceOf(142).found("no-middle-day")).hasSize(1);
        assertThat(practiceOf(143).found("no-middle-day")).isEmpty();
    }

    private static Squad practiceOf(int minutes) {
        return squad().placed("team-practice", "2027-03-02T10:00").lasting(minutes);
    }

    @Test
    void no_middle_day_costs_double_for_sprinters_and_off_season_but_not_four_times() {
        assertThat(games("2027-03-02").kind(GroupKind.SPRINT).found("no-middle-day"))
                .containsExactly(want(20, 6, 5.5));
        assertThat(games("2027-03-02").phase(Phase.OFF_SEASON).found("no-middle-day"))
                .containsExactly(want(20, 6, 5.5));
        assertThat(games("2027-03-02")
                        .phase(Phase.OFF_SEASON)
                        .kind(GroupKind.SPRINT)
                        .found("no-middle-day"))
                .containsExactly(want(20, 6, 5.5));
    }

    @Test
    void no_middle_day_is_not_judged_round_a_fixture_nor_for_novices() {
        for (String date : List.of("2027-03-03", "2027-03-04", "2027-03-06")) {
            Squad squad = games(date).fixture("cup-tie", "2027-03-05T15:00").weight(FixtureWeight.MINOR);
            assertThat(squad.found("no-middle-day")).as(date).isEmpty();
        }
        for (String date : List.of("2027-03-02", "2027-03-07")) {
            Squad squad = games(date).fixture("cup-tie", "2027-03-05T15:00");
            assertThat(squad.found("no-middle-day")).as(date).containsExactly(want(10, 6, 5.5));
        }
        assertThat(games("2027-03-02").level(Level.NOVICE).found("no-middle-day"))
                .isEmpty();
    }

    @Test
    void no_middle_day_after_a_fixture_of_last_week_is_not_judged() {
        assertThat(games("2027-03-01").done("fixture", "2027-02-28T15:00").found("no-middle-day"))
                .isEmpty();
        assertThat(games("2027-03-01").done("fixture", "2027-02-27T15:00").found("no-middle-day"))
                .hasSize(1);
    }

    @Test
    void no_middle_day_of_practice_alone_is_told() {
        Squad squad = squad().practice("long", "2027-03-02T18:00").lasting(124);
        assertThat(squad.found("no-middle-day")).containsExactly(told(5.64, 5.5));
        assertThat(squad.placed("mobility", "2027-03-02T10:00").found("no-middle-day"))
                .extracting(Amount::level)
                .containsExactly(RuleLevel.WANT);
    }

    @Test
    void no_middle_day_is_shared_by_those_who_have_it_and_can_be_weighted() {
        Squad squad = games("2027-03-02")
                .athlete("ash")
                .restricted(RestrictionLimit.LIGHT, "2027-03-02", "2027-03-02", Pathway.AEROBIC);
        assertThat(squad.found("no-middle-day")).containsExactly(want(9, 6, 5.5));
        assertThat(squad.weight("no-middle-day", 0.5).found("no-middle-day")).containsExactly(want(4.5, 6, 5.5));
        assertThat(squad.groupRule("no-middle-day", null, 2.0, Map.of("points", 5))
                        .found("no-middle-day"))
                .containsExactly(want(9, 6, 5.5));
        Squad sprinters = games("2027-03-02").kind(GroupKind.SPRINT);
        assertThat(sprinters
                        .number("no-middle-day", "sprintOrOffSeasonFactor", 3)
                        .found("no-middle-day"))
                .containsExactly(want(30, 6, 5.5));
    }

    /** 122 minutes of practice are 610 AU, 5.55 points of demand; 142 are 710 AU, 6.45 points, and not yet high. */
    @Test
    void no_middle_day_shows_what_it_measured_and_not_the_edge() {
        Squad justAboveLow = squad().placed("team-practice", "2027-03-02T10:00").lasting(122);
        assertThat(justAboveLow.found("no-middle-day")).containsExactly(want(10, 5.55, 5.5));
        Squad justBelowHigh =
                squad().placed("team-practice", "2027-03-02T10:00").lasting(142);
        assertThat(justBelowHigh.found("no-middle-day")).containsExactly(want(10, 6.45, 5.5));
    }
}
