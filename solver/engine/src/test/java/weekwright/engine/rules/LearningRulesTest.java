package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Amount;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;

/**
 * What comes first while people are fresh: technique 0, speed 1, jumps and power 2, practice 3, strength 4, hypertrophy
 * 5, conditioning 6, hamstrings 7. Expert proposal; contrary finding: Johnston et al. 2017, JSMS 20:502-506.
 */
class LearningRulesTest {
    private static final String FRESHEST = "freshest-first";
    private static final String MAXIMUM = "maximum-repeated";
    private static final String CHURN = "variant-churn";

    private static Squad day(String first, String second) {
        return squad().placed(first, "2027-03-02T10:00").placed(second, "2027-03-02T14:00");
    }

    @Test
    void freshest_first_speed_before_strength() {
        assertThat(day("acceleration", "heavy-lower-knee").found(FRESHEST)).isEmpty();
        assertThat(day("heavy-lower-knee", "acceleration").found(FRESHEST)).containsExactly(want(8, 4, 1));
        assertThat(day("heavy-lower-knee", "upper-strength").found(FRESHEST)).isEmpty();
    }

    @Test
    void freshest_first_the_whole_order_of_a_day() {
        List<String> inOrder = List.of(
                "technique",
                "acceleration",
                "intensive-plyometrics",
                "team-practice",
                "heavy-lower-knee",
                "lower-hypertrophy",
                "tempo-run",
                "hamstring-eccentric");
        for (int i = 1; i < inOrder.size(); i++) {
            assertThat(day(inOrder.get(i - 1), inOrder.get(i)).found(FRESHEST)).isEmpty();
            assertThat(day(inOrder.get(i), inOrder.get(i - 1)).found(FRESHEST)).containsExactly(want(8, i, i - 1));
        }
    }

    @Test
    void freshest_first_what_has_no_place_in_the_order_is_not_judged() {
        assertThat(day("heavy-lower-knee", "trunk-and-balance").found(FRESHEST)).isEmpty();
        assertThat(day("mobility", "technique").found(FRESHEST)).isEmpty();
        Squad match = squad().fixture("cup-tie", "2027-03-02T10:00").placed("technique", "2027-03-02T18:00");
        assertThat(match.found(FRESHEST)).isEmpty();
    }

    @Test
    void freshest_first_each_pair_of_a_day_counts() {
        Squad squad = day("tempo-run", "heavy-lower-knee").placed("acceleration", "2027-03-02T18:00");
        assertThat(squad.found(FRESHEST)).containsExactlyInAnyOrder(want(8, 6, 4), want(8, 6, 1), want(8, 4, 1));
        Squad sameStart =
                squad().placed("heavy-lower-knee", "2027-03-02T10:00").placed("acceleration", "2027-03-02T10:00");
        assertThat(sameStart.found(FRESHEST)).isEmpty();
        Squad nextDay =
                squad().placed("heavy-lower-knee", "2027-03-02T22:00").placed("acceleration", "2027-03-03T00:05");
        assertThat(nextDay.found(FRESHEST)).isEmpty();
    }

    @Test
    void freshest_first_minds_the_whole_of_a_long_day() {
        Squad early = squad().placed("tempo-run", "2027-03-02T06:00").placed("heavy-lower-knee", "2027-03-02T21:00");
        assertThat(early.found(FRESHEST)).containsExactly(want(8, 6, 4));
    }

    @Test
    void freshest_first_the_date_decides_when_the_clocks_change() {
        Squad squad = squad().week("2027-03-22")
                .placed("heavy-lower-knee", "2027-03-28T00:30")
                .placed("acceleration", "2027-03-28T02:30");
        assertThat(squad.found(FRESHEST)).containsExactly(want(8, 4, 1));
    }

    @Test
    void freshest_first_practice_counts_and_two_fixed_sessions_are_told() {
        Squad practice = squad().practice("morning", "2027-03-02T09:00");
        assertThat(practice.placed("acceleration", "2027-03-02T14:00").found(FRESHEST))
                .containsExactly(want(8, 3, 1));
        Squad before =
                squad().placed("heavy-lower-knee", "2027-03-02T10:00").pinned().practice("evening", "2027-03-02T18:00");
        assertThat(before.found(FRESHEST)).containsExactly(want(8, 4, 3));
        Squad fixed = squad().practice("morning", "2027-03-02T09:00")
                .commitment("club-night", "acceleration", "2027-03-02T18:00");
        assertThat(fixed.found(FRESHEST)).containsExactly(told(3, 1));
    }

    /** A new skill is learnt fresh: never after practice or harder work, and better before jumps. */
    @Test
    void freshest_first_a_new_skill_after_tiring_work_costs_sixteen() {
        Squad skill = squad().aim("technique", 0, 1, 1).learning().placed("technique", "2027-03-02T14:00");
        assertThat(skill.practice("morning", "2027-03-02T09:00").found(FRESHEST))
                .containsExactly(want(16, 3, 0));
        Squad afterJumps = day("intensive-plyometrics", "technique")
                .aim("technique", 0, 1, 1)
                .learning();
        assertThat(afterJumps.found(FRESHEST)).containsExactly(want(8, 2, 0));
        Squad known = day("heavy-lower-knee", "technique").aim("technique", 0, 1, 1);
        assertThat(known.found(FRESHEST)).containsExactly(want(8, 4, 0));
    }

    @Test
    void freshest_first_is_shared_by_those_who_do_both() {
        Squad squad = day("heavy-lower-knee", "acceleration")
                .athlete("ash")
                .restricted(RestrictionLimit.LIGHT, "2027-03-02", "2027-03-02", Pathway.ACCELERATION);
        assertThat(squad.found(FRESHEST)).containsExactly(want(7.2, 4, 1));
        assertThat(squad.weight(FRESHEST, 2).found(FRESHEST)).containsExactly(want(14.4, 4, 1));
    }

    @Test
    void freshest_first_its_numbers_can_be_changed() {
        Squad squad =
                day("heavy-lower-knee", "technique").aim("technique", 0, 1, 1).number(FRESHEST, "points", 5);
        assertThat(squad.found(FRESHEST)).containsExactly(want(5, 4, 0));
        squad.learning();
        assertThat(squad.groupNumber(FRESHEST, "newSkillPoints", 30).found(FRESHEST))
                .containsExactly(want(30, 4, 0));
        assertThat(squad.groupNumber(FRESHEST, "tiringFromOrder", 5).found(FRESHEST))
                .containsExactly(want(5, 4, 0));
        assertThat(squad.level(FRESHEST, RuleLevel.MUST).found(FRESHEST)).containsExactly(Amount.must(4, 0));
    }

    /** Weeks of squatting before 1 March 2027, one session each, the latest given last. */
    private static Squad squats(Level level, int days, String... lifts) {
        Squad squad = squad().days(days).level(level);
        for (int i = 0; i < lifts.length; i++) {
            String date =
                    LocalDate.parse("2027-03-02").minusWeeks(lifts.length - i).toString();
            squad.done("heavy-lower-knee", date + "T10:00");
            if (!lifts[i].equals("unknown")) {
                squad.lift(lifts[i]);
            }
        }
        return squad;
    }

    private static Squad squat(Squad squad, String date, String lift) {
        return squad.placed("heavy-lower-knee", date + "T10:00").lift(lift);
    }

    /** Rotation every 1 to 3 (advanced) or 3 to 6 weeks: common practice, no source. */
    @Test
    void maximum_repeated_three_weeks_running_for_the_advanced() {
        Squad two = squats(Level.ADVANCED, 7, "back-squat", "back-squat");
        assertThat(squat(two, "2027-03-02", "back-squat").found(MAXIMUM)).isEmpty();
        Squad three = squats(Level.ADVANCED, 7, "back-squat", "back-squat", "back-squat");
        assertThat(squat(three, "2027-03-02", "back-squat").found(MAXIMUM)).containsExactly(want(10, 4, 3));
        Squad other = squats(Level.ADVANCED, 7, "back-squat", "back-squat", "back-squat");
        assertThat(squat(other, "2027-03-02", "front-squat").found(MAXIMUM)).isEmpty();
    }

    @Test
    void maximum_repeated_six_weeks_running_for_the_trained_and_each_week_beyond_costs() {
        Squad squad = squats(Level.TRAINED, 28, "back-squat", "back-squat", "back-squat", "back-squat");
        squat(squad, "2027-03-02", "back-squat");
        squat(squad, "2027-03-09", "back-squat");
        assertThat(squad.found(MAXIMUM)).isEmpty();
        squat(squad, "2027-03-16", "back-squat");
        squat(squad, "2027-03-23", "back-squat");
        assertThat(squad.found(MAXIMUM)).containsExactly(want(10, 7, 6), want(10, 8, 6));
        assertThat(squad.pinned().found(MAXIMUM)).containsExactly(want(10, 7, 6), want(10, 8, 6));
        assertThat(squad.backwards().underOtherNames().found(MAXIMUM)).containsExactly(want(10, 7, 6), want(10, 8, 6));
    }

    @Test
    void maximum_repeated_a_smaller_dose_or_another_lift_ends_the_run_and_an_empty_week_does_not() {
        Squad reduced = squats(Level.ADVANCED, 14, "back-squat", "back-squat", "back-squat");
        squat(reduced, "2027-03-02", "back-squat").dose(Dose.REDUCED);
        assertThat(squat(reduced, "2027-03-09", "back-squat").found(MAXIMUM)).isEmpty();
        Squad micro = squats(Level.ADVANCED, 14, "back-squat", "back-squat", "back-squat");
        squat(micro, "2027-03-02", "back-squat").dose(Dose.MICRO);
        assertThat(squat(micro, "2027-03-09", "back-squat").found(MAXIMUM)).containsExactly(want(10, 4, 3));
        Squad empty = squats(Level.ADVANCED, 14, "back-squat", "back-squat", "back-squat");
        assertThat(squat(empty, "2027-03-09", "back-squat").found(MAXIMUM)).containsExactly(want(10, 4, 3));
        Squad missed = squats(Level.ADVANCED, 7, "back-squat", "back-squat", "back-squat")
                .missed();
        assertThat(squat(missed, "2027-03-02", "back-squat").found(MAXIMUM)).isEmpty();
        Squad unknown = squats(Level.ADVANCED, 7, "back-squat", "back-squat", "unknown");
        assertThat(squat(unknown, "2027-03-02", "back-squat").found(MAXIMUM)).isEmpty();
    }

    @Test
    void maximum_repeated_two_lifts_in_a_week_run_side_by_side() {
        Squad squad = squats(Level.ADVANCED, 7, "back-squat", "back-squat", "back-squat");
        squat(squad, "2027-03-01", "front-squat");
        assertThat(squat(squad, "2027-03-04", "back-squat").found(MAXIMUM)).containsExactly(want(10, 4, 3));
        assertThat(squat(squad, "2027-03-06", "back-squat").found(MAXIMUM)).containsExactly(want(10, 4, 3));
    }

    @Test
    void lifts_of_novices_are_not_judged() {
        Squad squad = squats(Level.NOVICE, 7, "back-squat", "back-squat", "back-squat", "front-squat");
        assertThat(squat(squad, "2027-03-02", "back-squat").found(CHURN)).isEmpty();
        assertThat(squad.number(MAXIMUM, "trainedWeeks", 1).found(MAXIMUM)).isEmpty();
    }

    @Test
    void maximum_repeated_its_numbers_can_be_changed() {
        Squad squad = squat(squats(Level.TRAINED, 7, "back-squat"), "2027-03-02", "back-squat");
        assertThat(squad.found(MAXIMUM)).isEmpty();
        squad.rule(MAXIMUM, null, 2.0, Map.of("trainedWeeks", 1, "points", 7));
        assertThat(squad.found(MAXIMUM)).containsExactly(want(14, 2, 1));
    }

    /** Expert proposal, grounded in Kassiano et al. 2022, JSCR 36:1753-1762. */
    @Test
    void variant_churn_a_lift_stays_for_two_exposures_of_the_trained_and_one_of_the_advanced() {
        for (Level level : new Level[] {Level.TRAINED, Level.ADVANCED}) {
            Squad once = squat(squats(level, 7, "box-squat", "box-squat"), "2027-03-02", "front-squat");
            assertThat(squat(once, "2027-03-06", "box-squat").found(CHURN))
                    .isEqualTo(level == Level.ADVANCED ? List.of() : List.of(want(6, 1, 2)));
        }
        Squad twice = squat(squats(Level.TRAINED, 14), "2027-03-02", "front-squat");
        squat(twice, "2027-03-05", "front-squat");
        assertThat(squat(twice, "2027-03-09", "box-squat").found(CHURN)).isEmpty();
    }

    @Test
    void variant_churn_what_a_placement_ends_counts_and_what_is_past_does_not() {
        Squad ended = squat(squats(Level.TRAINED, 7, "back-squat"), "2027-03-02", "front-squat");
        assertThat(ended.found(CHURN)).containsExactly(want(6, 1, 2));
        assertThat(ended.pinned().backwards().found(CHURN)).containsExactly(want(6, 1, 2));
        Squad past = squats(Level.TRAINED, 7, "back-squat", "front-squat", "box-squat", "box-squat");
        assertThat(squat(past, "2027-03-02", "box-squat").found(CHURN)).isEmpty();
    }

    @Test
    void variant_churn_a_micro_dose_is_no_exposure_and_an_unknown_lift_starts_anew() {
        Squad micro = squat(squats(Level.TRAINED, 7), "2027-03-02", "front-squat");
        squat(micro, "2027-03-04", "back-squat").dose(Dose.MICRO);
        assertThat(squat(micro, "2027-03-06", "front-squat").found(CHURN)).isEmpty();
        Squad unknown = squats(Level.TRAINED, 7, "back-squat", "unknown");
        assertThat(squat(unknown, "2027-03-02", "front-squat").found(CHURN)).isEmpty();
    }

    @Test
    void variant_churn_the_tested_lift_comes_back_within_four_weeks() {
        Squad squad = squats(Level.ADVANCED, 14, "back-squat", "box-squat", "box-squat", "front-squat")
                .aim("heavy-lower-knee", 0, 1, 1);
        assertThat(squat(squad, "2027-03-02", "back-squat").found(CHURN)).isEmpty();
        Squad late = squats(Level.ADVANCED, 14, "back-squat", "box-squat", "box-squat", "front-squat")
                .aim("heavy-lower-knee", 0, 1, 1);
        squat(late, "2027-03-02", "front-squat");
        assertThat(squat(late, "2027-03-03", "back-squat").found(CHURN)).containsExactly(want(8, 29, 28));
        assertThat(late.judged().only(CHURN).placements())
                .as("the one in which it comes back")
                .containsExactly("squad/heavy-lower-knee/2027-03-01/2");
        assertThat(late.judged().only(CHURN).text()).contains("from Tue 2 Feb to Wed 3 Mar");
        Squad never = squats(Level.ADVANCED, 14, "back-squat", "box-squat", "box-squat", "front-squat")
                .aim("heavy-lower-knee", 0, 1, 1);
        assertThat(never.found(CHURN)).containsExactly(want(8, 40, 28));
        Squad extra = squats(Level.ADVANCED, 14, "back-squat", "box-squat", "box-squat", "front-squat");
        assertThat(squat(extra, "2027-03-02", "front-squat").found(CHURN)).isEmpty();
    }

    @Test
    void variant_churn_without_a_history_the_tested_lift_is_due_from_the_first_day() {
        Squad four = squad().days(29).aim("heavy-lower-knee", 0, 1, 1);
        assertThat(four.found(CHURN)).isEmpty();
        Squad more = squad().days(30).aim("heavy-lower-knee", 0, 1, 1);
        assertThat(more.found(CHURN)).containsExactly(want(8, 29, 28));
        assertThat(squat(more, "2027-03-02", "back-squat").found(CHURN)).isEmpty();
        assertThat(squad().days(42).aim("trunk-and-balance", 0, 1, 1).found(CHURN))
                .isEmpty();
    }

    @Test
    void variant_churn_its_numbers_can_be_changed() {
        Squad squad = squat(squats(Level.TRAINED, 7, "back-squat", "back-squat"), "2027-03-02", "front-squat");
        assertThat(squad.found(CHURN)).isEmpty();
        squad.rule(CHURN, null, null, Map.of("exposures", 3, "points", 5));
        assertThat(squad.found(CHURN)).containsExactly(want(5, 2, 3));
        Squad tested = squad().days(14).aim("heavy-lower-knee", 0, 1, 1);
        tested.rule(CHURN, null, null, Map.of("testedWeeks", 1, "testedPoints", 4));
        assertThat(tested.found(CHURN)).containsExactly(want(4, 13, 7));
    }
}
