package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Blocker;
import weekwright.model.plan.CheapestOption;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Weekday;

/**
 * What is wanted and not placed, and what stands in the way. Options lie on the full hour here; heavy lower takes one,
 * technique half.
 */
class LeftOutsTest {
    /** Heavy lower is owed once, on Monday between two hours of the clock. */
    private static Squad lifting(String from, String to) {
        return squad().window(from, to, Weekday.MON).aim("heavy-lower-knee", 1, 1, 1);
    }

    private static LeftOut leftOut(Squad squad) {
        return squad.judged().leftOut();
    }

    @Test
    void a_free_option_that_betters_the_plan_is_named() {
        LeftOut left = leftOut(lifting("10:00", "13:00"));
        assertThat(left.text())
                .isEqualTo("Heavy lower, knee-dominant in the week from Mon 1 Mar is left out: 3 of 3 options break"
                        + " nothing that must hold; the best, Mon 1 Mar 10:00, would make the plan better.");
        assertThat(left.id()).isEqualTo("squad/heavy-lower-knee/2027-03-01/1");
        assertThat(left.options()).isEqualTo(3);
        assertThat(left.blockers()).isEmpty();
        assertThat(left.cheapest())
                .isEqualTo(new CheapestOption(
                        Moment.parse("2027-03-01T10:00"), "weights-room", Dose.FULL, new Totals(0, -1, 0, 0)));
    }

    @Test
    void what_stands_in_the_way_of_all_options_is_counted() {
        Squad squad = lifting("10:00", "13:00").open("weights-room", "15:00", "21:00");
        LeftOut left = leftOut(squad.commitment("meeting", null, "2027-03-01T11:30"));
        assertThat(left.text())
                .isEqualTo("Heavy lower, knee-dominant in the week from Mon 1 Mar is left out: each of 3 options breaks"
                        + " something that must hold. What stands in the way: The place is open (3, 1 by this alone);"
                        + " One place at a time (2).");
        assertThat(left.blockers())
                .containsExactly(new Blocker("facility-open", 3, 1), new Blocker("one-place-at-a-time", 2, 0));
    }

    @Test
    void a_single_option_that_is_blocked_is_said_so() {
        Squad squad = lifting("10:00", "11:00").fixture("cup-tie", "2027-03-01T15:00");
        assertThat(leftOut(squad).text())
                .isEqualTo("Heavy lower, knee-dominant in the week from Mon 1 Mar is left out: its only option breaks"
                        + " something that must hold. What stands in the way: Hours before a fixture (1, 1 by this"
                        + " alone).");
    }

    @Test
    void an_option_that_brings_no_more_than_it_costs() {
        Squad squad = squad().window("10:00", "11:00", Weekday.TUE)
                .aim("small-sided-games", 0, 1, 1)
                .priority(Priority.SPARE);
        LeftOut left = leftOut(squad);
        assertThat(left.text())
                .isEqualTo("Small-sided games in the week from Mon 1 Mar is left out: 1 of 1 option breaks nothing that"
                        + " must hold; but even the best, Tue 2 Mar 10:00, brings no more than it costs.");
        // A middle day costs 10, the session is worth 4.
        assertThat(left.cheapest()).isNotNull();
        assertThat(left.cheapest().change()).isEqualTo(new Totals(0, 0, 0, 6));
    }

    @Test
    void no_time_or_no_place() {
        assertThat(leftOut(lifting("10:00", "10:30")).text())
                .isEqualTo(
                        "Heavy lower, knee-dominant in the week from Mon 1 Mar is left out: Squad has no free time that"
                                + " is long enough for it with a place of the kind it needs.");
        assertThat(leftOut(squad().window("10:00", "10:15").aim("technique", 1, 1, 1))
                        .text())
                .isEqualTo("Technique drill / new skill in the week from Mon 1 Mar is left out: Squad has no free time"
                        + " that is long enough for it.");
        assertThat(leftOut(squad().aim("pool-recovery", 1, 1, 1)).options()).isZero();
    }

    @Test
    void a_session_held_out_by_the_coach() {
        Squad squad = lifting("10:00", "13:00").heldOut("squad/heavy-lower-knee/2027-03-01/1");
        LeftOut left = leftOut(squad);
        assertThat(left.text())
                .isEqualTo("Heavy lower, knee-dominant in the week from Mon 1 Mar is left out on purpose.");
        assertThat(left.pin()).isNotNull();
        assertThat(left.pin().out()).isTrue();
    }

    @Test
    void what_is_owed_and_what_is_only_wanted_have_their_level_and_cost() {
        assertThat(needs(1, 2, Priority.KEY)).containsExactly("least key 1.0", "target want 16.0");
        assertThat(needs(1, 2, Priority.MAIN)).containsExactly("least main 1.0", "target want 12.0");
        assertThat(needs(1, 2, Priority.SPARE)).containsExactly("least want 4.0", "target want 4.0");
        assertThat(needs(0, 0, Priority.KEY)).isEmpty();
    }

    private static List<String> needs(int least, int target, Priority priority) {
        Squad squad = squad().window("10:00", "11:00", Weekday.MON, Weekday.THU)
                .aim("technique", least, target, 3)
                .priority(priority);
        return squad.judged().judged().plan().leftOut().stream()
                .map(left -> left.need() + " " + left.level().id() + " " + left.cost())
                .toList();
    }

    @Test
    void commitments_and_what_is_placed_leave_less_to_be_told() {
        Squad squad = squad().window("10:00", "11:00", Weekday.MON, Weekday.THU)
                .aim("technique", 1, 2, 3)
                .placed("technique", "2027-03-01T10:00");
        assertThat(leftOut(squad).need()).isEqualTo("target");
        assertThat(leftOut(squad).level()).isEqualTo(RuleLevel.WANT);
        squad.commitment("skills-night", "technique", "2027-03-03T18:00");
        assertThat(squad.judged().judged().plan().leftOut()).isEmpty();
    }

    /** What a session's absence adds to the total follows the settings of the rules, as the total does. */
    @Test
    void left_out_sessions_have_the_level_and_cost_that_the_rules_are_set_to() {
        assertThat(leftOut(0, "aim-target", null, 0.5)).isEqualTo("want 8.0");
        assertThat(leftOut(1, "aim-least", RuleLevel.WANT, null)).isEqualTo("want 24.0");
        assertThat(leftOut(1, "aim-least", RuleLevel.MUST, null)).isEqualTo("must 1.0");
    }

    private static String leftOut(int least, String rule, @Nullable RuleLevel level, @Nullable Double weight) {
        LeftOut left = squad().window("10:00", "11:00", Weekday.MON)
                .aim("technique", least, 1, 1)
                .rule(rule, level, weight, Map.of())
                .judged()
                .leftOut();
        return left.level().id() + " " + left.cost();
    }
}
