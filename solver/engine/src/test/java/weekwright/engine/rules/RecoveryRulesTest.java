package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Finding;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;

/**
 * Hours between hard things. Expert proposals, grounded in Haugen et al. 2019, Sports Med Open 5:44, Table 2 (sprinting);
 * Thomas et al. 2018, MSSE 50:2526-2535 and Bartolomei et al. 2017, EJAP 117:1287-1298 (lifting). First sessions end on
 * Tuesday at 18:00, so that 40 hours later is Thursday 10:00 and 68 hours later Friday 14:00.
 */
class RecoveryRulesTest {
    private static final String FLOOR = "pathway-gap-floor";
    private static final String GAP = "pathway-gap";
    private static final String BLOCK_FLOOR = "high-block-floor";
    private static final String BLOCK_GAP = "high-block-gap";

    /** Maximal velocity on Tuesday from 16:55 to 18:00, and again. */
    private static Squad speedAgain(String start) {
        return squad().placed("max-velocity", "2027-03-02T16:55").placed("max-velocity", start);
    }

    @Test
    void pathway_gap_floor_maximal_speed_waits_forty_hours() {
        assertThat(speedAgain("2027-03-04T09:55").found(FLOOR)).containsExactly(must(39.92, 40));
        assertThat(speedAgain("2027-03-04T10:00").found(FLOOR)).isEmpty();
        assertThat(speedAgain("2027-03-04T10:05").found(FLOOR)).isEmpty();
    }

    /** Power lifting asks 16 hours before the knee is loaded again, heavy lower 40. */
    @Test
    void pathway_gap_floor_the_earlier_sessions_hours_hold() {
        Squad powerFirst = squad().placed("weightlifting-power", "2027-03-02T17:05")
                .placed("heavy-lower-knee", "2027-03-03T10:00");
        assertThat(powerFirst.found(FLOOR)).isEmpty();
        Squad heavyFirst = squad().placed("heavy-lower-knee", "2027-03-02T17:00")
                .placed("weightlifting-power", "2027-03-03T10:00");
        assertThat(heavyFirst.found(FLOOR)).containsExactly(must(16, 40));
    }

    @Test
    void pathway_gap_floor_only_what_is_high_in_both_counts() {
        // Maximal velocity meets acceleration and the hip at low intensity only.
        Squad squad = squad().placed("max-velocity", "2027-03-02T16:55")
                .placed("acceleration", "2027-03-03T10:00")
                .placed("heavy-lower-hip", "2027-03-03T12:00");
        assertThat(squad.found(FLOOR)).isEmpty();
    }

    /** 40 hours x 0.6 are 24: Wednesday 17:35, when the micro dose ended Tuesday 17:35; a reduced dose asks all 40. */
    @Test
    void pathway_gap_floor_a_micro_dose_asks_six_tenths() {
        assertThat(afterMicroSpeed("2027-03-03T17:30").found(FLOOR)).containsExactly(must(23.92, 24));
        assertThat(afterMicroSpeed("2027-03-03T17:35").found(FLOOR)).isEmpty();
        Squad reduced = squad().placed("max-velocity", "2027-03-02T16:55")
                .dose(Dose.REDUCED)
                .placed("max-velocity", "2027-03-04T09:45");
        // It ends 17:50.
        assertThat(reduced.found(FLOOR)).containsExactly(must(39.92, 40));
    }

    private static Squad afterMicroSpeed(String start) {
        return squad().placed("max-velocity", "2027-03-02T16:55")
                .dose(Dose.MICRO)
                .placed("max-velocity", start);
    }

    @Test
    void pathway_gap_floor_a_family_never_comes_twice_a_day() {
        Squad twice = squad().placed("mobility", "2027-03-02T08:00")
                .placed("heavy-lower-knee", "2027-03-02T09:00")
                .placed("heavy-lower-knee", "2027-03-02T17:00");
        assertThat(twice.found(FLOOR)).containsExactly(must(7, 40));
        Squad two = squad().placed("heavy-lower-knee", "2027-03-02T09:00")
                .placed("weightlifting-power", "2027-03-02T17:00");
        assertThat(two.found(FLOOR)).isEmpty();
        Squad easy = squad().placed("technique", "2027-03-02T09:00").placed("technique", "2027-03-02T17:00");
        assertThat(easy.found(FLOOR)).hasSize(1);
        Squad recovery = squad().placed("mobility", "2027-03-02T09:00").placed("mobility", "2027-03-02T17:00");
        assertThat(recovery.found(FLOOR)).isEmpty();
    }

    @Test
    void pathway_gap_floor_looks_past_what_lies_between() {
        Squad squad = squad().placed("max-velocity", "2027-03-02T16:55")
                .placed("heavy-upper-push", "2027-03-03T10:00")
                .placed("max-velocity", "2027-03-04T09:00");
        assertThat(squad.found(FLOOR)).containsExactly(must(39, 40));
    }

    @Test
    void pathway_gap_floor_history_and_practice_count_beside_what_is_placed() {
        Squad history = squad().done("max-velocity", "2027-02-28T17:00").placed("max-velocity", "2027-03-02T09:00");
        assertThat(history.found(FLOOR)).containsExactly(must(39, 40));
        Squad practice = squad().commitment("club-night", "max-velocity", "2027-03-02T17:00")
                .placed("max-velocity", "2027-03-04T09:00");
        assertThat(practice.found(FLOOR)).containsExactly(must(39, 40));
        Squad after = squad().placed("max-velocity", "2027-03-02T16:55")
                .pinned()
                .commitment("club-night", "max-velocity", "2027-03-04T09:00");
        assertThat(after.found(FLOOR)).containsExactly(must(39, 40));
    }

    @Test
    void pathway_gap_floor_what_was_missed_asks_nothing() {
        Squad squad =
                squad().done("max-velocity", "2027-02-28T17:00").missed().placed("max-velocity", "2027-03-02T09:00");
        assertThat(squad.found(FLOOR)).isEmpty();
        assertThat(squad.found(GAP)).isEmpty();
    }

    @Test
    void pathway_gap_floor_two_fixed_sessions_are_told() {
        Squad squad = squad().done("max-velocity", "2027-02-28T17:00")
                .commitment("club-night", "max-velocity", "2027-03-02T09:00");
        assertThat(squad.found(FLOOR)).containsExactly(told(39, 40));
        assertThat(squad.found(GAP)).containsExactly(told(39, 68));
        assertThat(squad.judged().totals().want()).isZero();
    }

    /** From Saturday 18:00 winter time, 40 hours reach Monday 11:00 summer time; in autumn Monday 09:00. */
    @Test
    void pathway_gap_floor_counts_elapsed_hours_when_the_clocks_change() {
        assertThat(overTheSpringChange("2027-03-29T10:55").found(FLOOR)).containsExactly(must(39.92, 40));
        assertThat(overTheSpringChange("2027-03-29T11:00").found(FLOOR)).isEmpty();
        assertThat(overTheAutumnChange("2027-11-01T08:55").found(FLOOR)).containsExactly(must(39.92, 40));
        assertThat(overTheAutumnChange("2027-11-01T09:00").found(FLOOR)).isEmpty();
    }

    private static Squad overTheSpringChange(String start) {
        return squad().week("2027-03-22")
                .days(14)
                .placed("max-velocity", "2027-03-27T16:55")
                .placed("max-velocity", start);
    }

    private static Squad overTheAutumnChange(String start) {
        return squad().week("2027-10-25")
                .days(14)
                .placed("max-velocity", "2027-10-30T16:55")
                .placed("max-velocity", start);
    }

    @Test
    void pathway_gap_floor_concerns_those_who_did_both() {
        Squad squad = speedAgain("2027-03-04T09:00")
                .athlete("ash")
                .restricted(RestrictionLimit.LIGHT, "2027-03-02", "2027-03-02", Pathway.MAX_VELOCITY_SPRINT);
        Finding finding = squad.judged().only(FLOOR);
        assertThat(finding.heads()).isEqualTo(9);
        assertThat(finding.cost()).isEqualTo(1);
        // As a want it is an hour short, a point for nine of ten.
        assertThat(squad.level(FLOOR, RuleLevel.WANT).found(FLOOR)).containsExactly(want(0.9, 39, 40));
    }

    @Test
    void pathway_gap_floor_its_hours_can_be_set_by_quality_and_group() {
        Squad squad = speedAgain("2027-03-04T10:00");
        Map<String, Object> longer = Map.of("max-velocity-sprint", 48);
        assertThat(squad.number(FLOOR, "hours", longer).found(FLOOR)).containsExactly(must(40, 48));
        Map<String, Object> shorter = Map.of("max-velocity-sprint", 36);
        assertThat(squad.groupNumber(FLOOR, "hours", shorter).found(FLOOR)).isEmpty();
    }

    /** Acceleration ends on Tuesday at 18:00 and keeps its 40 hours, whatever is asked for maximal speed. */
    @Test
    void pathway_gap_floor_hours_set_for_another_quality_are_nothing_to_it() {
        Squad squad = squad().placed("acceleration", "2027-03-02T17:05").placed("acceleration", "2027-03-04T10:00");
        assertThat(squad.number(FLOOR, "hours", Map.of("max-velocity-sprint", 48))
                        .found(FLOOR))
                .isEmpty();
    }

    /** That they overlap, from 23:30 to 00:35 and from 00:15 on, is another rule's. */
    @Test
    void pathway_gap_floor_and_gap_ask_nothing_where_a_coach_sets_no_hours() {
        Map<String, Object> none = Map.of("max-velocity-sprint", 0);
        Squad squad = squad().placed("max-velocity", "2027-03-02T23:30").placed("max-velocity", "2027-03-03T00:15");
        assertThat(squad.number(FLOOR, "hours", none).found(FLOOR)).isEmpty();
        assertThat(squad.number(GAP, "hours", none).found(GAP)).isEmpty();
        Squad apart = speedAgain("2027-03-03T08:00").number(FLOOR, "hours", none);
        assertThat(apart.found(FLOOR)).isEmpty();
    }

    /** 72 hours are wanted and 68 count as enough: the same hour on alternate days carries no fine. */
    @Test
    void pathway_gap_maximal_speed_wants_seventy_two_hours_less_four() {
        assertThat(speedAgain("2027-03-05T13:55").found(GAP)).containsExactly(want(0.1, 67.92, 68));
        assertThat(speedAgain("2027-03-05T14:00").found(GAP)).isEmpty();
        assertThat(speedAgain("2027-03-05T14:05").found(GAP)).isEmpty();
    }

    @Test
    void pathway_gap_an_hour_beyond_the_twelfth_costs_double() {
        assertThat(speedAgain("2027-03-05T02:00").found(GAP)).containsExactly(want(12, 56, 68));
        assertThat(speedAgain("2027-03-05T01:00").found(GAP)).containsExactly(want(14, 55, 68));
    }

    /** Acceleration wants 48 hours, repeated sprints 72, before acceleration comes again. */
    @Test
    void pathway_gap_the_earlier_sessions_hours_hold() {
        Squad short48 = squad().placed("acceleration", "2027-03-02T17:05").placed("acceleration", "2027-03-04T13:00");
        assertThat(short48.found(GAP)).containsExactly(want(1, 43, 44));
        Squad short72 =
                squad().placed("repeated-sprint", "2027-03-02T17:15").placed("acceleration", "2027-03-05T13:00");
        assertThat(short72.found(GAP)).containsExactly(want(1, 67, 68));
    }

    /** 72 x 0.6 - 4 = 39.2: the micro dose ends on Tuesday at 17:35, and 39 h 12 min later it is Thursday 08:47. */
    @Test
    void pathway_gap_a_micro_dose_wants_six_tenths() {
        assertThat(afterMicroSpeed("2027-03-04T08:40").found(GAP)).containsExactly(want(0.1, 39.08, 39.2));
        assertThat(afterMicroSpeed("2027-03-04T08:47").found(GAP)).isEmpty();
    }

    /** Haugen et al. 2019, Table 2: 48 to 72 h; sprint and strength groups take 48, less four. */
    @Test
    void pathway_gap_sprinters_and_lifters_come_again_after_two_days() {
        Squad sprinters = speedAgain("2027-03-04T13:55").kind(GroupKind.SPRINT);
        assertThat(sprinters.found(GAP)).containsExactly(want(0.1, 43.92, 44));
        assertThat(speedAgain("2027-03-04T14:00").kind(GroupKind.SPRINT).found(GAP))
                .isEmpty();
        Squad lifters = squad().kind(GroupKind.STRENGTH)
                .placed("heavy-lower-knee", "2027-03-02T17:00")
                .placed("heavy-lower-knee", "2027-03-04T13:00");
        assertThat(lifters.found(GAP)).containsExactly(want(1, 43, 44));
    }

    /** Long sprints are high on both: 48 hours would do for the speed, the lungs want their 72, less four. */
    @Test
    void pathway_gap_long_sprints_keep_the_hours_of_the_lungs_among_sprinters() {
        Squad squad = squad().kind(GroupKind.SPRINT)
                .placed("speed-endurance", "2027-03-02T16:50")
                .placed("speed-endurance", "2027-03-05T13:00");
        assertThat(squad.found(GAP)).containsExactly(want(1, 67, 68));
    }

    @Test
    void pathway_gap_hypertrophy_keeps_its_own_hours_among_lifters() {
        Squad squad = squad().kind(GroupKind.STRENGTH)
                .placed("lower-hypertrophy", "2027-03-02T17:00")
                .placed("lower-hypertrophy", "2027-03-06T13:00");
        assertThat(squad.found(GAP)).containsExactly(want(1, 91, 92));
    }

    @Test
    void pathway_gap_its_hours_can_be_set_by_quality_and_group() {
        Squad squad = speedAgain("2027-03-05T01:00");
        assertThat(squad.number(GAP, "hours", Map.of("max-velocity-sprint", 60)).found(GAP))
                .containsExactly(want(1, 55, 56));
        assertThat(squad.groupNumber(GAP, "hours", Map.of("max-velocity-sprint", 59))
                        .found(GAP))
                .isEmpty();
        assertThat(squad.groupNumber(GAP, "toleranceHours", 0).found(GAP)).containsExactly(want(5, 55, 60));
        assertThat(squad.groupRule(GAP, null, 0.5, Map.of()).found(GAP)).containsExactly(want(0.5, 55, 56));
    }

    @Test
    void pathway_gap_of_two_shared_qualities_the_longer_hours_hold_once() {
        Squad squad =
                squad().placed("lower-hypertrophy", "2027-03-02T17:00").placed("lower-hypertrophy", "2027-03-05T13:00");
        assertThat(squad.number(GAP, "hours", Map.of("knee-dominant", 48, "hip-dominant", 73))
                        .found(GAP))
                .containsExactly(want(2, 67, 69));
    }

    @Test
    void pathway_gap_within_a_day_nothing_is_wanted() {
        Squad squad =
                squad().placed("acceleration", "2027-03-02T08:00").placed("resisted-acceleration", "2027-03-02T18:00");
        assertThat(squad.found(GAP)).isEmpty();
        assertThat(squad.found(FLOOR)).isEmpty();
    }

    @Test
    void pathway_gap_counts_elapsed_hours_when_the_clocks_change() {
        // Saturday 18:00 to Tuesday 14:00 is 67 hours in spring and 69 in autumn.
        assertThat(overTheSpringChange("2027-03-30T14:00").found(GAP)).containsExactly(want(1, 67, 68));
        assertThat(overTheAutumnChange("2027-11-02T13:00").found(GAP)).isEmpty();
    }

    @Test
    void pathway_gap_history_and_pins_count() {
        Squad history = squad().done("max-velocity", "2027-02-28T17:00").placed("max-velocity", "2027-03-03T13:00");
        assertThat(history.found(GAP)).containsExactly(want(1, 67, 68));
        assertThat(history.pinned().found(GAP)).containsExactly(want(1, 67, 68));
        Squad before = squad().placed("max-velocity", "2027-03-05T16:55")
                .pinned()
                .commitment("club-night", "max-velocity", "2027-03-08T13:00");
        assertThat(before.found(GAP)).containsExactly(want(1, 67, 68));
    }

    @Test
    void pathway_gap_is_shared_by_those_who_did_both() {
        Squad squad = speedAgain("2027-03-05T04:00")
                .athlete("ash")
                .restricted(RestrictionLimit.NONE, "2027-03-05", "2027-03-05", Pathway.JUMP_LANDING);
        assertThat(squad.found(GAP)).containsExactly(want(9, 58, 68));
        assertThat(squad.judged().only(GAP).heads()).isEqualTo(9);
    }

    /** Ash runs with the squad of ten on Tuesday and with four sprinters on Friday: a quarter of the later group. */
    @Test
    void pathway_gap_of_two_groups_is_shared_by_the_later() {
        Squad squad = speedAgain("2027-03-05T04:00")
                .of("sprinters")
                .group("sprinters")
                .heads(4)
                .athlete("ash", Squad.ID, "sprinters");
        assertThat(squad.found(GAP)).containsExactly(want(2.5, 58, 68));
        // The later group is the one whose rules and kind hold.
        assertThat(squad.kind(GroupKind.SPRINT).found(GAP)).isEmpty();
    }

    /** Lower hypertrophy asks 40 hours before the next high day. */
    private static Squad afterHypertrophy(String acceleration) {
        return squad().placed("lower-hypertrophy", "2027-03-02T17:00").placed("acceleration", acceleration);
    }

    @Test
    void high_block_floor_the_next_high_day_waits() {
        assertThat(afterHypertrophy("2027-03-04T09:55").found(BLOCK_FLOOR)).containsExactly(must(39.92, 40));
        assertThat(afterHypertrophy("2027-03-04T10:00").found(BLOCK_FLOOR)).isEmpty();
        assertThat(afterHypertrophy("2027-03-04T10:05").found(BLOCK_FLOOR)).isEmpty();
    }

    @Test
    void high_block_floor_the_largest_hours_of_the_earlier_day_hold() {
        // Acceleration asks 16 hours, repeated sprints 40; the block ends with the acceleration at 18:00.
        Squad squad = squad().placed("repeated-sprint", "2027-03-02T09:00")
                .placed("acceleration", "2027-03-02T17:05")
                .placed("heavy-lower-knee", "2027-03-04T09:00");
        assertThat(squad.found(BLOCK_FLOOR)).containsExactly(must(39, 40));
    }

    @Test
    void high_block_floor_easy_work_is_no_part_of_a_high_day() {
        Squad squad = afterHypertrophy("2027-03-04T10:00")
                .placed("trunk-and-balance", "2027-03-02T20:00")
                .placed("technique", "2027-03-04T08:00");
        assertThat(squad.found(BLOCK_FLOOR)).isEmpty();
    }

    /** Two practices and a micro dose of repeated sprints make a high day by their load; all belong to it, 40 x 0.6. */
    @Test
    void high_block_floor_a_day_high_by_its_load_is_a_block_as_a_whole() {
        assertThat(afterALongDay("2027-03-03T16:25").found(BLOCK_FLOOR)).containsExactly(must(23.92, 24));
        assertThat(afterALongDay("2027-03-03T16:30").found(BLOCK_FLOOR)).isEmpty();
    }

    private static Squad afterALongDay(String acceleration) {
        return squad().practice("early", "2027-03-02T08:00")
                .practice("noon", "2027-03-02T12:00")
                .placed("repeated-sprint", "2027-03-02T16:00")
                .dose(Dose.MICRO)
                .placed("acceleration", acceleration);
    }

    @Test
    void high_block_floor_only_the_next_high_day_is_judged() {
        Squad squad = afterHypertrophy("2027-03-03T08:00").placed("max-velocity", "2027-03-04T01:00");
        assertThat(squad.found(BLOCK_FLOOR)).containsExactly(must(14, 40));
    }

    @Test
    void high_block_floor_a_day_with_a_fixture_is_no_block() {
        Squad squad = squad().fixture("cup-tie", "2027-03-03T15:00")
                .placed("lower-hypertrophy", "2027-03-02T17:00")
                .placed("lower-hypertrophy", "2027-03-03T19:00");
        assertThat(squad.found(BLOCK_FLOOR)).isEmpty();
    }

    @Test
    void high_block_floor_history_counts_and_fixed_days_are_told() {
        Squad history =
                squad().done("lower-hypertrophy", "2027-02-28T17:00").placed("acceleration", "2027-03-02T09:00");
        assertThat(history.found(BLOCK_FLOOR)).containsExactly(must(39, 40));
        Squad fixed = squad().commitment("contact", "contact-practice", "2027-03-02T17:00")
                .commitment("speed", "acceleration", "2027-03-04T09:00");
        assertThat(fixed.found(BLOCK_FLOOR)).containsExactly(told(39, 40));
        assertThat(fixed.found(BLOCK_GAP)).containsExactly(told(39, 44));
    }

    @Test
    void high_block_floor_counts_elapsed_hours_when_the_clocks_change() {
        Squad squad = squad().week("2027-03-22").days(14).placed("lower-hypertrophy", "2027-03-27T17:00");
        assertThat(squad.placed("acceleration", "2027-03-29T10:00").found(BLOCK_FLOOR))
                .containsExactly(must(39, 40));
        Squad autumn = squad().week("2027-10-25").days(14).placed("lower-hypertrophy", "2027-10-30T17:00");
        assertThat(autumn.placed("acceleration", "2027-11-01T09:00").found(BLOCK_FLOOR))
                .isEmpty();
    }

    /** Ash sits out on Wednesday, so that his next high day is Thursday. */
    @Test
    void high_block_floor_each_has_a_next_high_day_of_their_own() {
        Squad squad = afterHypertrophy("2027-03-03T08:00")
                .placed("max-velocity", "2027-03-04T08:00")
                .athlete("ash")
                .restricted(RestrictionLimit.LIGHT, "2027-03-03", "2027-03-03", Pathway.ACCELERATION);
        assertThat(squad.found(BLOCK_FLOOR)).containsExactly(must(14, 40), must(38, 40));
        assertThat(squad.judged().of(BLOCK_FLOOR)).extracting(Finding::heads).containsExactly(9, 1);
    }

    /** In a week without a fixture 48 hours are wanted between high days of different qualities, and 44 are enough. */
    @Test
    void high_block_gap_wants_two_days_without_a_fixture() {
        assertThat(afterHypertrophy("2027-03-04T13:55").found(BLOCK_GAP)).containsExactly(want(0.1, 43.92, 44));
        assertThat(afterHypertrophy("2027-03-04T14:00").found(BLOCK_GAP)).isEmpty();
        assertThat(afterHypertrophy("2027-03-04T14:05").found(BLOCK_GAP)).isEmpty();
    }

    /** Acceleration from 09:05 to 10:00; in a week with a fixture 20 hours are enough. */
    @Test
    void high_block_gap_wants_a_day_in_a_week_with_a_fixture() {
        assertThat(liftingAfterSpeed("2027-03-03T05:55").found(BLOCK_GAP)).containsExactly(want(0.1, 19.92, 20));
        assertThat(liftingAfterSpeed("2027-03-03T06:00").found(BLOCK_GAP)).isEmpty();
    }

    private static Squad liftingAfterSpeed(String start) {
        return squad().fixture("cup-tie", "2027-03-06T15:00")
                .placed("acceleration", "2027-03-02T09:05")
                .placed("heavy-lower-knee", start);
    }

    @Test
    void high_block_gap_the_week_of_the_later_day_decides() {
        Squad squad = squad().days(14)
                .placed("acceleration", "2027-03-07T09:05")
                .placed("heavy-lower-knee", "2027-03-08T10:00");
        assertThat(squad.fixture("cup-tie", "2027-03-06T15:00").found(BLOCK_GAP))
                .containsExactly(want(28, 24, 44));
        assertThat(squad.fixture("league", "2027-03-13T15:00").found(BLOCK_GAP)).isEmpty();
    }

    @Test
    void high_block_gap_days_of_the_same_quality_are_left_to_the_pathway_gap() {
        Squad squad = speedAgain("2027-03-04T10:00");
        assertThat(squad.found(BLOCK_GAP)).isEmpty();
        assertThat(squad.found(GAP)).hasSize(1);
    }

    @Test
    void high_block_gap_is_shared_by_those_with_both_days() {
        Squad squad = afterHypertrophy("2027-03-04T10:00");
        assertThat(squad.found(BLOCK_GAP)).containsExactly(want(4, 40, 44));
        squad.athlete("ash").restricted(RestrictionLimit.LIGHT, "2027-03-04", "2027-03-04", Pathway.ACCELERATION);
        assertThat(squad.found(BLOCK_GAP)).containsExactly(want(3.6, 40, 44));
    }

    @Test
    void high_block_gap_its_hours_can_be_changed() {
        Squad squad = afterHypertrophy("2027-03-04T10:00");
        assertThat(squad.number(BLOCK_GAP, "otherWeekHours", 46).found(BLOCK_GAP))
                .containsExactly(want(2, 40, 42));
        assertThat(squad.groupNumber(BLOCK_GAP, "otherWeekHours", 44).found(BLOCK_GAP))
                .isEmpty();
        Squad withFixture = liftingAfterSpeed("2027-03-03T06:00");
        assertThat(withFixture.number(BLOCK_GAP, "fixtureWeekHours", 26).found(BLOCK_GAP))
                .containsExactly(want(2, 20, 22));
    }

    @Test
    void high_block_gap_history_counts_and_elapsed_hours_too() {
        Squad history =
                squad().done("lower-hypertrophy", "2027-02-28T17:00").placed("acceleration", "2027-03-02T13:00");
        assertThat(history.found(BLOCK_GAP)).containsExactly(want(1, 43, 44));
        Squad spring = squad().week("2027-03-22")
                .days(14)
                .placed("lower-hypertrophy", "2027-03-27T17:00")
                .pinned()
                .placed("acceleration", "2027-03-29T14:00");
        assertThat(spring.found(BLOCK_GAP)).containsExactly(want(1, 43, 44));
    }

    /** Maximal velocity ends on Tuesday at 0:35, and comes again on the Tuesday after, more than seven dates later. */
    @Test
    void pathway_gap_floor_reaches_from_one_night_to_another() {
        Squad squad =
                squad().days(14).placed("max-velocity", "2027-03-01T23:30").placed("max-velocity", "2027-03-09T00:00");
        assertThat(squad.number("pathway-gap-floor", "hours", Map.of("max-velocity-sprint", 168))
                        .found(FLOOR))
                .containsExactly(must(167.42, 168));
    }

    @Test
    void what_was_done_too_close_together_in_the_past_is_not_told() {
        assertThat(squad().done("heavy-lower-knee", "2027-02-26T10:00")
                        .done("heavy-lower-knee", "2027-02-26T18:00")
                        .found(FLOOR))
                .isEmpty();
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
}
