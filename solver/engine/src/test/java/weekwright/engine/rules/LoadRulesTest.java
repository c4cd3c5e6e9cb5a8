package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.must;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Finding;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;
import weekwright.model.scenario.Share;

/**
 * Top speed every seven days. Expert proposal, grounded in Malone et al. 2017, J Sci Med Sport 20:250-254 (95 %); Colby
 * et al. 2018, IJSPP 13:1130-1135; Buchheit et al. 2023, Biol Sport 40:1057-1067; observational.
 */
class LoadRulesTest {
    private static final String EXPOSURE = "speed-exposure";

    /** The squad sprints as an aim, last on a day before Monday 1 March, and next on that Monday. */
    private static Squad lastSprinted(String date) {
        return squad().aim("max-velocity", 0, 1, 2)
                .done("max-velocity", date + "T10:00")
                .placed("max-velocity", "2027-03-01T10:00");
    }

    @Test
    void speed_exposure_seven_days_are_enough_and_each_day_beyond_costs_six() {
        assertThat(lastSprinted("2027-02-23").found(EXPOSURE)).isEmpty();
        assertThat(lastSprinted("2027-02-22").found(EXPOSURE)).isEmpty();
        assertThat(lastSprinted("2027-02-21").found(EXPOSURE)).containsExactly(want(6, 8, 7));
        assertThat(lastSprinted("2027-02-20").found(EXPOSURE)).containsExactly(want(12, 9, 7));
    }

    @Test
    void speed_exposure_one_long_gap_costs_thirty_six_at_most() {
        assertThat(lastSprinted("2027-02-16").found(EXPOSURE)).containsExactly(want(36, 13, 7));
        assertThat(lastSprinted("2027-02-10").found(EXPOSURE)).containsExactly(want(36, 19, 7));
    }

    @Test
    void speed_exposure_the_last_before_the_plan_counts() {
        assertThat(lastSprinted("2027-02-10")
                        .done("max-velocity", "2027-02-21T10:00")
                        .found(EXPOSURE))
                .containsExactly(want(6, 8, 7));
    }

    @Test
    void speed_exposure_without_any_in_the_history_the_first_day_begins_the_line() {
        assertThat(squad().days(8).aim("max-velocity", 0, 1, 1).found(EXPOSURE)).isEmpty();
        assertThat(squad().days(9).aim("max-velocity", 0, 1, 1).found(EXPOSURE)).containsExactly(want(6, 8, 7));
    }

    @Test
    void speed_exposure_the_end_of_the_plan_ends_the_last_link() {
        Squad squad = squad().days(14).aim("max-velocity", 0, 1, 2).placed("max-velocity", "2027-03-02T10:00");
        assertThat(squad.found(EXPOSURE)).containsExactly(want(30, 12, 7));
        assertThat(squad.placed("max-velocity", "2027-03-09T10:00").found(EXPOSURE))
                .isEmpty();
        Squad month = squad().days(28)
                .aim("max-velocity", 0, 1, 2)
                .placed("max-velocity", "2027-03-10T10:00")
                .placed("max-velocity", "2027-03-18T10:00");
        assertThat(month.found(EXPOSURE)).containsExactly(want(18, 10, 7), want(12, 9, 7), want(6, 8, 7));
    }

    @Test
    void speed_exposure_any_dose_any_fast_family_and_practice_count() {
        Squad squad = squad().days(21)
                .aim("max-velocity", 0, 1, 1)
                .doses(Dose.FULL, Dose.MICRO)
                .placed("max-velocity", "2027-03-03T10:00")
                .dose(Dose.MICRO)
                .pinned()
                .placed("speed-endurance", "2027-03-10T10:00")
                .commitment("club-night", "max-velocity", "2027-03-17T18:00");
        assertThat(squad.found(EXPOSURE)).isEmpty();
    }

    @Test
    void speed_exposure_is_judged_where_an_aim_sprints_for_whomever() {
        assertThat(squad().days(14).found(EXPOSURE)).isEmpty();
        assertThat(squad().days(14).aim("acceleration", 0, 1, 1).found(EXPOSURE))
                .isEmpty();
        assertThat(squad().days(14)
                        .aim("max-velocity", 0, 1, 1)
                        .whom(Share.NOT_PLAYED)
                        .found(EXPOSURE))
                .containsExactly(want(36, 13, 7));
    }

    /** Malone et al. 2017: 95 % of best speed. */
    @Test
    void speed_exposure_a_fixture_counts_only_where_it_was_measured() {
        assertThat(afterFixture(0.95).found(EXPOSURE)).isEmpty();
        assertThat(afterFixture(0.94).found(EXPOSURE)).containsExactly(want(6, 8, 7));
        assertThat(afterFixture(null).found(EXPOSURE)).containsExactly(want(6, 8, 7));
    }

    /** Ash sprinted on Sunday 21 February, played a match on the 25th, and sprints on 1 March. */
    private static Squad afterFixture(@org.jspecify.annotations.Nullable Double topSpeedShare) {
        return lastSprinted("2027-02-21")
                .heads(1)
                .athlete("ash")
                .done("fixture", "2027-02-25T15:00")
                .person("ash", 90, topSpeedShare);
    }

    @Test
    void speed_exposure_a_fixture_to_come_is_no_exposure() {
        Squad squad = squad().days(9).aim("max-velocity", 0, 1, 1).fixture("cup-tie", "2027-03-06T15:00");
        assertThat(squad.found(EXPOSURE)).containsExactly(want(6, 8, 7));
    }

    @Test
    void speed_exposure_those_with_the_same_gap_are_one_finding() {
        Squad squad = lastSprinted("2027-02-21")
                .athlete("ash")
                .done("max-velocity", "2027-02-25T10:00")
                .without("ash");
        assertThat(squad.found(EXPOSURE)).containsExactly(want(0.6, 8, 7));
        assertThat(squad.judged().only(EXPOSURE).athletes()).containsExactly("ash");
        Squad two = squad().days(14)
                .aim("max-velocity", 0, 1, 1)
                .athlete("ash")
                .done("max-velocity", "2027-02-25T10:00")
                .without("ash");
        assertThat(two.judged().of(EXPOSURE)).extracting(Finding::heads).containsExactly(9, 1);
        assertThat(two.found(EXPOSURE)).containsExactly(want(32.4, 17, 7), want(3.6, 13, 7));
    }

    @Test
    void speed_exposure_rests_where_a_clinician_bars_it() {
        Squad squad = squad().days(14).heads(1).aim("max-velocity", 0, 1, 1).athlete("ash");
        squad.restricted(RestrictionLimit.LIGHT, "2027-02-20", "2027-03-01", Pathway.MAX_VELOCITY_SPRINT);
        assertThat(squad.found(EXPOSURE)).isEmpty();
        Squad lastDay = squad().days(14).heads(1).aim("max-velocity", 0, 1, 1).athlete("ash");
        lastDay.restricted(RestrictionLimit.LIGHT, "2027-03-14", "2027-03-20", Pathway.MAX_VELOCITY_SPRINT);
        assertThat(lastDay.found(EXPOSURE)).isEmpty();
        Squad knee = squad().days(14).heads(1).aim("max-velocity", 0, 1, 1).athlete("ash");
        knee.restricted(RestrictionLimit.NONE, "2027-03-01", "2027-03-14", Pathway.KNEE_DOMINANT);
        assertThat(knee.found(EXPOSURE)).containsExactly(want(36, 13, 7));
        // The day after the plan, and the day before the line begins, are no part of it.
        Squad outside = squad().days(14).heads(1).aim("max-velocity", 0, 1, 1).athlete("ash");
        outside.restricted(RestrictionLimit.LIGHT, "2027-02-20", "2027-02-28", Pathway.MAX_VELOCITY_SPRINT)
                .restricted(RestrictionLimit.LIGHT, "2027-03-15", "2027-03-20", Pathway.MAX_VELOCITY_SPRINT);
        assertThat(outside.found(EXPOSURE)).containsExactly(want(36, 13, 7));
    }

    @Test
    void speed_exposure_what_was_missed_is_none() {
        assertThat(lastSprinted("2027-02-21")
                        .done("max-velocity", "2027-02-25T10:00")
                        .missed()
                        .found(EXPOSURE))
                .containsExactly(want(6, 8, 7));
    }

    @Test
    void speed_exposure_counts_dates_when_the_clocks_change() {
        Squad squad = squad().week("2027-03-22")
                .days(14)
                .aim("max-velocity", 0, 1, 1)
                .placed("max-velocity", "2027-03-22T06:00")
                .placed("max-velocity", "2027-03-29T23:00");
        assertThat(squad.found(EXPOSURE)).isEmpty();
    }

    @Test
    void speed_exposure_its_numbers_can_be_changed() {
        Squad squad = lastSprinted("2027-02-20");
        assertThat(squad.number(EXPOSURE, "days", 9).found(EXPOSURE)).isEmpty();
        assertThat(squad.number(EXPOSURE, "pointsADay", 2).found(EXPOSURE)).containsExactly(want(4, 9, 7));
        assertThat(squad.groupNumber(EXPOSURE, "mostPoints", 3).found(EXPOSURE)).containsExactly(want(3, 9, 7));
        assertThat(squad.groupRule(EXPOSURE, RuleLevel.MUST, null, Map.of()).found(EXPOSURE))
                .containsExactly(must(9, 7));
    }
}
