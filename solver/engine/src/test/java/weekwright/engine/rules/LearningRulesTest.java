package weekwright.engine.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Amount.want;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Amount;
import weekwright.engine.testing.Squad;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;

/**
 * What comes first while people are fresh: technique 0, speed 1, jumps and power 2, practice 3, strength 4, hypertrophy
 * 5, conditioning 6, hamstrings 7. Expert proposal; contrary finding: Johnston et al. 2017, JSMS 20:502-506.
 */
class LearningRulesTest {
    private static final String FRESHEST = "freshest-first";

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
}
