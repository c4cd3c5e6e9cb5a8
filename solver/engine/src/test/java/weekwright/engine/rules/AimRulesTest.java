package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.key;
import static weekwright.engine.testing.Amount.main;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Effort;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Share;

/** What the coach wants trained each week. The most is common practice, no source; all points are expert proposals. */
class AimRulesTest {
    /** An aim of trunk work, and so many of its sessions in the first week, a day each. */
    private static Squad trunk(int least, int target, int most, int placed) {
        Squad squad = squad().aim("trunk-and-balance", least, target, most);
        for (int day = 1; day <= placed; day++) {
            squad.placed("trunk-and-balance", "2027-03-0" + day + "T10:00");
        }
        return squad;
    }

    @Test
    void aim_most_never_more_than_allowed() {
        assertThat(trunk(0, 1, 2, 1).found("aim-most")).isEmpty();
        assertThat(trunk(0, 1, 2, 2).found("aim-most")).isEmpty();
        assertThat(trunk(0, 1, 2, 3).found("aim-most")).containsExactly(must(3, 2));
        assertThat(trunk(0, 1, 2, 5).found("aim-most")).containsExactly(must(5, 2));
    }

    @Test
    void aim_most_every_dose_counts_and_every_pin() {
        Squad squad = trunk(0, 1, 1, 1).doses(Dose.FULL, Dose.MICRO);
        assertThat(squad.placed("trunk-and-balance", "2027-03-05T10:00")
                        .dose(Dose.MICRO)
                        .pinned()
                        .found("aim-most"))
                .containsExactly(must(2, 1));
    }

    @Test
    void aim_most_commitments_count_but_alone_they_break_nothing() {
        Squad squad = trunk(0, 1, 1, 0)
                .commitment("monday-trunk", "trunk-and-balance", "2027-03-01T18:00")
                .commitment("tuesday-trunk", "trunk-and-balance", "2027-03-02T18:00");
        assertThat(squad.found("aim-most")).isEmpty();
        assertThat(squad.placed("trunk-and-balance", "2027-03-04T10:00").found("aim-most"))
                .containsExactly(must(3, 1));
    }

    @Test
    void aim_most_weeks_groups_and_other_families_are_apart() {
        Squad squad = trunk(0, 1, 1, 1)
                .days(14)
                .placed("trunk-and-balance", "2027-03-08T10:00")
                .placed("technique", "2027-03-02T10:00")
                .group("sprinters")
                .placed("trunk-and-balance", "2027-03-03T10:00")
                .of("sprinters");
        assertThat(squad.found("aim-most")).isEmpty();
    }

    /** 2 x 4/7 is more than 1, so 2 are allowed in a week of four days; 1 x 4/7 is rounded up too. */
    @Test
    void aim_most_is_rounded_up_in_a_short_last_week() {
        assertThat(trunk(0, 0, 2, 2).days(4).found("aim-most")).isEmpty();
        assertThat(trunk(0, 0, 1, 2).days(4).found("aim-most")).containsExactly(must(2, 1));
    }

    @Test
    void aim_most_as_a_want_costs_twenty_four() {
        Squad squad = trunk(0, 1, 1, 3);
        assertThat(squad.level("aim-most", RuleLevel.WANT).found("aim-most")).containsExactly(want(24, 3, 1));
    }

    @Test
    void aim_least_each_missing_session_is_one_at_its_priority() {
        assertThat(trunk(2, 2, 3, 0).found("aim-least")).containsExactly(key(2, 0, 2));
        assertThat(trunk(2, 2, 3, 1).found("aim-least")).containsExactly(key(1, 1, 2));
        assertThat(trunk(2, 2, 3, 2).found("aim-least")).isEmpty();
        assertThat(trunk(2, 2, 3, 3).found("aim-least")).isEmpty();
        assertThat(trunk(2, 2, 3, 1).priority(Priority.MAIN).found("aim-least")).containsExactly(main(1, 1, 2));
        assertThat(trunk(2, 2, 3, 1).priority(Priority.SPARE).found("aim-least"))
                .isEmpty();
    }

    @Test
    void aim_least_a_micro_dose_counts_only_where_the_aim_says_so() {
        Squad squad = trunk(1, 1, 1, 1).dose(Dose.MICRO).doses(Dose.FULL, Dose.REDUCED, Dose.MICRO);
        assertThat(squad.found("aim-least")).containsExactly(key(1, 0, 1));
        assertThat(squad.microCounts().found("aim-least")).isEmpty();
        Squad reduced = trunk(1, 1, 1, 1).dose(Dose.REDUCED).doses(Dose.FULL, Dose.REDUCED);
        assertThat(reduced.found("aim-least")).isEmpty();
    }

    @Test
    void aim_least_commitments_of_the_family_count_in_their_week() {
        Squad squad = squad().days(14)
                .aim("team-practice", 1, 1, 3)
                .practice("monday", "2027-03-01T18:00")
                .effort(Effort.EASY);
        assertThat(squad.found("aim-least")).containsExactly(key(1, 0, 1));
        assertThat(squad.practice("next-week", "2027-03-10T18:00").found("aim-least"))
                .isEmpty();
    }

    @Test
    void aim_least_commitments_of_other_groups_or_for_some_only_do_not_count() {
        Squad other = squad().aim("team-practice", 1, 1, 3).practice("b-team", "2027-03-01T18:00");
        assertThat(other.of("reserves").group("reserves").found("aim-least")).containsExactly(key(1, 0, 1));
        Squad some = squad().aim("team-practice", 0, 1, 3)
                .aim("team-practice", 1, 1, 3)
                .whom(Share.NOT_PLAYED)
                .practice("monday", "2027-03-01T18:00");
        assertThat(some.found("aim-least")).containsExactly(key(1, 0, 1));
        assertThat(some.found("aim-target")).isEmpty();
    }

    /** 2 x 4/7 is rounded down to 1. */
    @Test
    void aim_least_is_rounded_down_in_a_short_last_week() {
        assertThat(trunk(2, 2, 2, 0).days(4).found("aim-least")).containsExactly(key(1, 0, 1));
        assertThat(trunk(1, 1, 1, 0).days(4).found("aim-least")).isEmpty();
    }

    @Test
    void aim_least_as_a_want_a_must_or_told() {
        Squad squad = trunk(2, 2, 3, 0);
        assertThat(squad.level("aim-least", RuleLevel.WANT).found("aim-least")).containsExactly(want(48, 0, 2));
        assertThat(squad.level("aim-least", RuleLevel.MUST).found("aim-least")).containsExactly(must(0, 2));
        assertThat(squad.level("aim-least", RuleLevel.TOLD).found("aim-least")).containsExactly(told(0, 2));
        // The priority stays the level where only the weight is changed.
        Squad heavier = trunk(2, 2, 3, 0).priority(Priority.MAIN).weight("aim-least", 1.5);
        assertThat(heavier.found("aim-least")).containsExactly(main(3, 0, 2));
    }

    @Test
    void aim_target_sixteen_twelve_or_four_points_each() {
        assertThat(trunk(0, 2, 3, 0).found("aim-target")).containsExactly(want(32, 0, 2));
        assertThat(trunk(0, 2, 3, 1).found("aim-target")).containsExactly(want(16, 1, 2));
        assertThat(trunk(0, 2, 3, 2).found("aim-target")).isEmpty();
        assertThat(trunk(0, 2, 3, 3).found("aim-target")).isEmpty();
        assertThat(trunk(0, 2, 3, 1).priority(Priority.MAIN).found("aim-target"))
                .containsExactly(want(12, 1, 2));
        assertThat(trunk(0, 2, 3, 1).priority(Priority.SPARE).found("aim-target"))
                .containsExactly(want(4, 1, 2));
    }

    @Test
    void aim_target_what_is_owed_is_not_fined_twice_but_for_spare_aims() {
        assertThat(trunk(1, 2, 3, 0).found("aim-target")).containsExactly(want(16, 0, 2));
        assertThat(trunk(1, 1, 3, 0).found("aim-target")).isEmpty();
        assertThat(trunk(1, 2, 3, 0).priority(Priority.SPARE).found("aim-target"))
                .containsExactly(want(8, 0, 2));
    }

    @Test
    void aim_target_micro_doses_and_commitments_count() {
        Squad squad = trunk(0, 2, 3, 1).dose(Dose.MICRO).doses(Dose.FULL, Dose.MICRO);
        assertThat(squad.found("aim-target")).containsExactly(want(16, 1, 2));
        assertThat(squad.commitment("class", "trunk-and-balance", "2027-03-05T18:00")
                        .found("aim-target"))
                .isEmpty();
    }

    /** 2 x 5/7 is 1.43 and rounded to 1, 2 x 6/7 is 1.71 and rounded to 2; 7/2 x 4/7 would be exactly half. */
    @Test
    void aim_target_is_rounded_half_up_in_a_short_last_week() {
        assertThat(trunk(0, 2, 3, 0).days(5).found("aim-target")).containsExactly(want(16, 0, 1));
        assertThat(trunk(0, 2, 3, 0).days(6).found("aim-target")).containsExactly(want(32, 0, 2));
    }

    @Test
    void aim_target_its_points_can_be_changed_by_scenario_and_group() {
        Squad squad = trunk(0, 1, 3, 0).number("aim-target", "keyPoints", 20);
        assertThat(squad.found("aim-target")).containsExactly(want(20, 0, 1));
        assertThat(squad.groupNumber("aim-target", "keyPoints", 9).found("aim-target"))
                .containsExactly(want(9, 0, 1));
        assertThat(squad.groupRule("aim-target", null, 0.5, Map.of()).found("aim-target"))
                .containsExactly(want(10, 0, 1));
        assertThat(squad.priority(Priority.MAIN)
                        .number("aim-target", "mainPoints", 6)
                        .found("aim-target"))
                .containsExactly(want(3, 0, 1));
        assertThat(squad.priority(Priority.SPARE)
                        .number("aim-target", "sparePoints", 2)
                        .found("aim-target"))
                .containsExactly(want(1, 0, 1));
    }

    /** A key session of an aim that would rather have it in full; three thirds are wanted. */
    private static Squad inDose(Dose dose) {
        return trunk(1, 1, 1, 1)
                .dose(dose)
                .doses(Dose.FULL, Dose.REDUCED, Dose.MICRO)
                .microCounts();
    }

    @Test
    void dose_kept_a_quarter_for_reduced_and_half_for_micro() {
        assertThat(inDose(Dose.FULL).found("dose-kept")).isEmpty();
        assertThat(inDose(Dose.REDUCED).found("dose-kept")).containsExactly(want(4, 2, 3));
        assertThat(inDose(Dose.MICRO).found("dose-kept")).containsExactly(want(8, 1, 3));
        assertThat(inDose(Dose.REDUCED).priority(Priority.MAIN).found("dose-kept"))
                .containsExactly(want(3, 2, 3));
        assertThat(inDose(Dose.MICRO).priority(Priority.SPARE).found("dose-kept"))
                .containsExactly(want(2, 1, 3));
    }

    @Test
    void dose_kept_the_fullest_dose_of_the_aim_is_the_measure() {
        assertThat(inDose(Dose.MICRO).doses(Dose.REDUCED, Dose.MICRO).found("dose-kept"))
                .containsExactly(want(4, 1, 2));
        assertThat(inDose(Dose.REDUCED).doses(Dose.REDUCED, Dose.MICRO).found("dose-kept"))
                .isEmpty();
        assertThat(inDose(Dose.MICRO).doses(Dose.MICRO).found("dose-kept")).isEmpty();
        Squad extra = squad().placed("trunk-and-balance", "2027-03-01T10:00").dose(Dose.MICRO);
        assertThat(extra.found("dose-kept")).isEmpty();
    }

    @Test
    void dose_kept_is_waived_between_fixtures_fewer_than_five_days_apart() {
        assertThat(between("2027-02-25T15:00", "2027-03-01T20:00").found("dose-kept"))
                .isEmpty();
        assertThat(between("2027-02-25T15:00", "2027-03-02T15:00").found("dose-kept"))
                .containsExactly(want(8, 1, 3));
        // Both before it, or both after it, are not round it.
        assertThat(between("2027-02-25T15:00", "2027-02-27T15:00").found("dose-kept"))
                .hasSize(1);
        assertThat(inDose(Dose.MICRO)
                        .fixture("cup-tie", "2027-03-03T15:00")
                        .fixture("replay", "2027-03-05T15:00")
                        .found("dose-kept"))
                .hasSize(1);
    }

    /** What starts with a fixture comes after it, and so lies before no other. Common practice, no source. */
    @Test
    void dose_kept_at_the_start_of_the_later_fixture_it_is_no_longer_between_them() {
        assertThat(between("2027-02-25T15:00", "2027-03-01T10:05").found("dose-kept"))
                .isEmpty();
        assertThat(between("2027-02-25T15:00", "2027-03-01T10:00").found("dose-kept"))
                .hasSize(1);
    }

    /** A micro dose on Monday morning, a fixture in the history and another one. */
    private static Squad between(String before, String other) {
        Squad squad = inDose(Dose.MICRO).done("fixture", before);
        return other.compareTo("2027-03-01") < 0 ? squad.done("fixture", other) : squad.fixture("cup-tie", other);
    }

    @Test
    void dose_kept_its_numbers_can_be_changed() {
        assertThat(inDose(Dose.REDUCED).number("dose-kept", "reducedShare", 0.5).found("dose-kept"))
                .containsExactly(want(8, 2, 3));
        assertThat(inDose(Dose.MICRO).groupNumber("dose-kept", "microShare", 1).found("dose-kept"))
                .containsExactly(want(16, 1, 3));
        assertThat(inDose(Dose.MICRO).number("aim-target", "keyPoints", 10).found("dose-kept"))
                .containsExactly(want(5, 1, 3));
        assertThat(between("2027-02-25T15:00", "2027-03-02T15:00")
                        .number("dose-kept", "waivedDays", 6)
                        .found("dose-kept"))
                .isEmpty();
    }

    @Test
    void dose_kept_is_not_shared_by_heads() {
        Squad squad = squad().athlete("ash")
                .aim("acceleration", 0, 1, 1)
                .whom(Share.NOT_PLAYED)
                .doses(Dose.FULL, Dose.MICRO)
                .done("fixture", "2027-02-27T15:00")
                .without("ash")
                .placed("acceleration", "2027-03-02T10:00")
                .dose(Dose.MICRO);
        assertThat(squad.found("dose-kept")).containsExactly(want(8, 1, 3));
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
}
