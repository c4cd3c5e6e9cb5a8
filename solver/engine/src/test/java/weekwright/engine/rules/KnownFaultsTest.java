package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Weekday;

/**
 * Where the engine departs from its rules: each test says what is right, and fails until that is so. None may be weakened;
 * one that passes moves to the class of its theme.
 */
class KnownFaultsTest {
    /** Ash alone is in both groups: the squad plays on Saturday at 10:00, the eight sprinters do not. */
    private static Squad sprintersBeforeTheSquadsMatch() {
        return squad().group("sprinters")
                .heads(8)
                .athlete("ash", Squad.ID, "sprinters")
                .placed("max-velocity", "2027-03-04T18:00")
                .of("sprinters")
                .fixture("cup-tie", "2027-03-06T10:00");
    }

    @Test
    void before_fixture_those_of_another_group_do_not_play_it() {
        Finding finding = sprintersBeforeTheSquadsMatch().judged().only("before-fixture");
        assertThat(finding.heads()).isEqualTo(1);
        assertThat(finding.athletes()).containsExactly("ash");
    }

    @Test
    void before_fixture_nobody_plays_where_the_only_one_of_both_groups_is_on_the_bench() {
        assertThat(sprintersBeforeTheSquadsMatch().expecting("ash", 0).found("before-fixture"))
                .isEmpty();
    }

    /** 66 hours after it where 68 count: two points for one of eight sprinters. */
    @Test
    void after_fixture_margin_those_of_another_group_did_not_play_it() {
        Squad squad = squad().group("sprinters")
                .heads(8)
                .athlete("ash", Squad.ID, "sprinters")
                .fixture("cup-tie", "2027-03-01T16:15")
                .placed("max-velocity", "2027-03-04T12:00")
                .of("sprinters");
        assertThat(squad.found("after-fixture-margin")).containsExactly(want(0.3, 66, 68));
    }

    /** The only one who trains on the Wednesday played on the Monday: four points for one of eight. */
    @Test
    void free_day_place_those_of_another_group_did_not_play_it() {
        Squad squad = squad().group("sprinters")
                .heads(8)
                .athlete("ash", "sprinters", Squad.ID)
                .fixture("cup-tie", "2027-03-01T15:00")
                .placed("technique", "2027-03-03T10:00")
                .of("sprinters");
        assertThat(squad.found("free-day-place")).containsExactly(want(0.5, 1, 0));
    }

    /** Ash plays for the squad on Monday and on Wednesday, and is a sprinter first. */
    @Test
    void free_day_place_rests_where_a_fixture_of_the_athletes_other_group_comes_first() {
        Squad squad = squad().group("sprinters")
                .athlete("ash", "sprinters", Squad.ID)
                .fixture("cup-tie", "2027-03-01T15:00")
                .fixture("replay", "2027-03-03T15:00")
                .placed("technique", "2027-03-02T10:00");
        assertThat(squad.found("free-day-place")).isEmpty();
    }

    /** The fixture before it lies on the same date: closer than five days. */
    @Test
    void load_falls_to_fixture_rests_before_the_second_fixture_of_a_day() {
        Squad squad = squad().fixture("heat", "2027-03-06T09:00")
                .fixture("final", "2027-03-06T15:00")
                .placed("technique", "2027-03-03T10:00")
                .placed("tempo-run", "2027-03-04T10:00");
        assertThat(squad.found("load-falls-to-fixture")).containsExactly(want(8, 160, 90));
    }

    /** The rulebook accepts up to 168 hours: maximal velocity ends Monday 11:05, and comes again on Monday 10:00. */
    @Test
    void pathway_gap_floor_and_gap_reach_as_far_as_their_numbers() {
        Squad squad =
                squad().days(14).placed("max-velocity", "2027-03-01T10:00").placed("max-velocity", "2027-03-08T10:00");
        Map<String, Object> week = Map.of("max-velocity-sprint", 168);
        assertThat(squad.number("pathway-gap-floor", "hours", week).found("pathway-gap-floor"))
                .containsExactly(must(166.92, 168));
        assertThat(squad.rule("pathway-gap", null, null, Map.of("hours", week, "toleranceHours", 0))
                        .found("pathway-gap"))
                .containsExactly(want(1.1, 166.92, 168));
    }

    /** The rulebook accepts up to seven days: six in the history and Monday. */
    @Test
    void four_high_days_reach_back_as_far_as_their_number() {
        Squad squad = squad().number("four-high-days", "days", 7).placed("lower-hypertrophy", "2027-03-01T10:00");
        for (int day = 23; day <= 28; day++) {
            squad.done("lower-hypertrophy", "2027-02-" + day + "T10:00");
        }
        assertThat(squad.found("four-high-days")).containsExactly(must(7, 6));
    }

    /** No hours are wanted for technique after a fixture, not even within a long one. */
    @Test
    void after_fixture_margin_wants_nothing_where_no_hours_are_given() {
        Squad squad = squad().fixture("open", "meet-lift", "2027-03-02T10:00")
                .lasting(480)
                .placed("technique", "2027-03-02T12:00");
        assertThat(squad.found("after-fixture-margin")).isEmpty();
    }

    /** Two and a half thirds of 180 AU are 150, and Friday carries 135. */
    @Test
    void load_falls_to_fixture_takes_parts_of_thirds() {
        Squad squad = squad().number("load-falls-to-fixture", "lastDayThirds", 2.5)
                .fixture("cup-tie", "2027-03-06T15:00")
                .placed("technique", "2027-03-03T10:00")
                .lasting(60)
                .placed("technique", "2027-03-04T10:00")
                .lasting(60)
                .placed("technique", "2027-03-05T10:00")
                .lasting(45);
        assertThat(squad.found("load-falls-to-fixture")).isEmpty();
    }

    /** The clock jumps from 01:00 to 02:00: heavy lower from 00:30 ends at 02:30, half an hour too late. */
    @Test
    void preferred_time_goes_by_the_clock_while_it_changes() {
        Squad squad = squad().week("2027-03-22")
                .aim("heavy-lower-knee", 0, 1, 1)
                .prefers("00:00", "02:00")
                .placed("heavy-lower-knee", "2027-03-28T00:30");
        assertThat(squad.found("preferred-time")).containsExactly(want(2, 30, 0));
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

    /** A micro dose does not count for the least: one of one is missing, and not 'one, where one is wanted'. */
    @Test
    void aim_target_says_what_a_spare_aim_is_short_of() {
        Squad squad = squad().aim("technique", 1, 1, 1)
                .priority(Priority.SPARE)
                .doses(Dose.FULL, Dose.MICRO)
                .placed("technique", "2027-03-02T10:00")
                .dose(Dose.MICRO);
        assertThat(squad.found("aim-target")).containsExactly(want(4, 0, 1));
    }

    /** One micro dose where one is owed and two are wanted: four for the least and four for the target. */
    @Test
    void aim_target_of_a_spare_aim_costs_its_least_and_its_target() {
        Squad squad = squad().aim("technique", 1, 2, 2)
                .priority(Priority.SPARE)
                .doses(Dose.FULL, Dose.MICRO)
                .placed("technique", "2027-03-02T10:00")
                .dose(Dose.MICRO);
        assertThat(squad.judged().only("aim-target").cost()).isEqualTo(8);
    }

    /** Ash, a sprinter, comes for treatment while the seven sprinters lift: the squad has nothing to do with it. */
    @Test
    void facility_room_concerns_those_who_are_there() {
        Squad squad = squad().group("sprinters")
                .heads(7)
                .athlete("ash", "sprinters")
                .room("weights-room", null, 7)
                .placed("heavy-lower-knee", "2027-03-02T10:00")
                .of("sprinters")
                .commitment("treatment", null, "2027-03-02T10:30")
                .only("ash")
                .at("weights-room");
        assertThat(squad.judged().only("facility-room").groups()).containsExactly("sprinters");
    }

    /** What a session's absence adds to the total follows the settings of the rules, as the total does. */
    @Test
    void left_out_sessions_have_the_level_and_cost_that_the_rules_are_set_to() {
        assertThat(leftOut(0, "aim-target", null, 0.5)).isEqualTo("want 8.0");
        assertThat(leftOut(1, "aim-least", RuleLevel.WANT, null)).isEqualTo("want 24.0");
        assertThat(leftOut(1, "aim-least", RuleLevel.MUST, null)).isEqualTo("must 1.0");
    }

    private static String leftOut(
            int least,
            String rule,
            @org.jspecify.annotations.Nullable RuleLevel level,
            @org.jspecify.annotations.Nullable Double weight) {
        LeftOut left = squad().window("10:00", "11:00", Weekday.MON)
                .aim("technique", least, 1, 1)
                .rule(rule, level, weight, Map.of())
                .judged()
                .leftOut();
        return left.level().id() + " " + left.cost();
    }

    /** What was fixed by others is told on a day of the plan where one of the two lies in it. */
    @Test
    void a_fact_told_of_history_and_the_plan_lies_in_the_plan() {
        Squad squad = squad().done("fixture", "2027-02-28T16:15").practice("early", "2027-03-01T06:00");
        Finding finding = squad.judged().only("after-fixture");
        assertThat(List.of(finding.level(), finding.cost())).containsExactly(RuleLevel.TOLD, 0.0);
        assertThat(finding.day()).isEqualTo("2027-03-01");
        assertThat(finding.week()).isEqualTo("2027-03-01");
        assertThat(squad.found("after-fixture")).containsExactly(told(12, 16));
    }
}
