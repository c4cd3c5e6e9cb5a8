package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.testing.Squad;
import weekwright.model.answer.Change;
import weekwright.model.answer.Comparison;
import weekwright.model.answer.Shift;
import weekwright.model.answer.Spot;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Priority;
import weekwright.model.scenario.Weekday;

/** Two plans side by side: what moved, was added, dropped, and which rules are kept better and worse. */
class ComparisonsTest {
    private static final String HEAVY = "squad/heavy-lower-knee/2027-03-01/1";

    /** A second plan of the same scenario; nobody says more of the scenario than the first squad does. */
    private static Comparison compared(Squad before, Squad after) {
        Plan first = Engine.judge(before.scenario(), before.plan()).plan();
        return Comparisons.of(
                before.scenario(),
                first,
                Engine.judge(before.scenario(), after.plan()).plan());
    }

    private static Comparison afterChange(Squad before, Squad after) {
        return Comparisons.underChange(
                after.scenario(),
                Engine.judge(before.scenario(), before.plan()).plan(),
                Engine.judge(after.scenario(), before.plan()).plan(),
                Engine.judge(after.scenario(), after.plan()).plan());
    }

    /** Heavy lower is owed once; it can lie from Monday to Thursday, and is wanted from five to seven. */
    private static Squad lifting() {
        return squad().window("16:00", "20:00", Weekday.MON, Weekday.TUE, Weekday.WED, Weekday.THU)
                .facility("barn", FacilityKind.GYM)
                .aim("heavy-lower-knee", 1, 1, 1)
                .prefers("17:00", "19:00");
    }

    private static String change(Squad before, Squad after) {
        List<Change> changes = compared(before, after).sessions();
        assertThat(changes).hasSize(1);
        return changes.get(0).text();
    }

    private static Squad at(String start) {
        return lifting().placed("heavy-lower-knee", start);
    }

    // --- sessions ---

    @Test
    void two_equal_plans() {
        Comparison same = compared(at("2027-03-02T17:00"), at("2027-03-02T17:00"));
        assertThat(same)
                .isEqualTo(new Comparison(
                        new Totals(0, 0, 0, 0),
                        null,
                        new Totals(0, 0, 0, 0),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        "The two plans are the same."));
    }

    @Test
    void a_session_that_moves_to_another_day_or_hour() {
        Comparison moved = compared(at("2027-03-02T17:00"), at("2027-03-03T17:00"));
        assertThat(moved.sessions())
                .containsExactly(new Change(
                        HEAVY,
                        List.of("moved"),
                        new Spot(Moment.parse("2027-03-02T17:00"), "weights-room", Dose.FULL),
                        new Spot(Moment.parse("2027-03-03T17:00"), "weights-room", Dose.FULL),
                        "Heavy lower, knee-dominant (Tue 2 Mar 17:00) moves to Wed 3 Mar 17:00."));
        assertThat(moved.text()).isEqualTo("1 session moves, and the plan is as good as before.");
        assertThat(change(at("2027-03-02T17:00"), at("2027-03-02T18:00")))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 17:00) moves to 18:00.");
    }

    @Test
    void a_session_at_another_place_in_another_dose_under_another_lead() {
        Squad before =
                at("2027-03-02T17:00").staff("head", "*").staff("second", "*").ledBy("head");
        Squad after = at("2027-03-02T17:00").at("barn").dose(Dose.REDUCED).ledBy("second");
        assertThat(change(before, after))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 17:00) is held at Barn instead of at Weights room, is"
                        + " done in a reduced dose instead of a full one and is led by Second instead of Head.");
        assertThat(compared(before, after).sessions().get(0).what()).containsExactly("placed", "dosed", "led");
        assertThat(compared(before, after).text()).startsWith("1 session changes its place, and the plan is worse: ");
    }

    @Test
    void another_lift() {
        Squad before = at("2027-03-02T17:00").lift("back-squat");
        assertThat(change(before, at("2027-03-02T17:00").lift("front-squat")))
                .isEqualTo("Heavy lower, knee-dominant (Tue 2 Mar 17:00) is Front squat instead of Back squat.");
    }

    @Test
    void a_session_that_is_added() {
        Comparison added = compared(lifting(), at("2027-03-02T17:00").dose(Dose.REDUCED));
        assertThat(added.sessions())
                .containsExactly(new Change(
                        HEAVY,
                        List.of("added"),
                        null,
                        new Spot(Moment.parse("2027-03-02T17:00"), "weights-room", Dose.REDUCED),
                        "Heavy lower, knee-dominant is added on Tue 2 Mar 17:00, Weights room, reduced dose."));
        assertThat(added.text())
                .isEqualTo(
                        "1 session is added, and the plan is better: key work falls short by 1 less and 4 points more"
                                + " of wishes are unmet.");
    }

    @Test
    void a_session_that_is_dropped_says_what_stands_in_the_way() {
        Squad shut = at("2027-03-02T17:00");
        for (String place : List.of("weights-room", "barn")) {
            shut.closed(place, "2027-03-01T00:00", "2027-03-06T00:00");
        }
        Squad without = lifting();
        assertThat(change(shut, without))
                .isEqualTo(
                        "Heavy lower, knee-dominant (Tue 2 Mar 17:00) is dropped: each of 32 options breaks something"
                                + " that must hold. What stands in the way: The place is open (32, 32 by this alone).");
        assertThat(compared(shut, without).text())
                .isEqualTo(
                        "1 session is dropped, and the plan is better: 1 thing fewer is broken that must hold and key"
                                + " work falls short by 1 more.");
    }

    /** Nothing is left out of a plan that keeps what is wanted: more than that was placed. */
    @Test
    void a_session_beyond_what_was_wanted_is_dropped_without_a_word() {
        Squad before = squad().window("16:00", "20:00")
                .aim("mobility", 0, 1, 2)
                .priority(Priority.SPARE)
                .placed("mobility", "2027-03-01T16:00")
                .placed("mobility", "2027-03-03T16:00");
        Squad after = squad().placed("mobility", "2027-03-03T16:00");
        assertThat(change(before, after)).isEqualTo("Mobility (Mon 1 Mar 16:00) is dropped.");
    }

    /** The sessions of an aim's week are alike: that they change their numbers is nothing to a coach. */
    @Test
    void sessions_of_one_aim_that_change_their_numbers_have_not_changed() {
        Squad before = squad().aim("mobility", 0, 2, 3)
                .placed("mobility", "2027-03-01T16:00")
                .placed("mobility", "2027-03-03T16:00");
        Squad after = squad().placed("mobility", "2027-03-02T16:00").placed("mobility", "2027-03-03T16:00");
        assertThat(change(before, after)).isEqualTo("Mobility (Mon 1 Mar 16:00) moves to Tue 2 Mar 16:00.");
    }

    @Test
    void several_sessions_in_order_of_time_and_how_many_changed_in_which_way() {
        Squad before = squad().aim("mobility", 0, 3, 3)
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-02T17:00")
                .placed("mobility", "2027-03-01T16:00")
                .placed("mobility", "2027-03-03T16:00");
        Squad after = squad().placed("mobility", "2027-03-02T09:00")
                .placed("mobility", "2027-03-04T16:00")
                .placed("mobility", "2027-03-05T16:00");
        assertThat(compared(before, after).sessions())
                .extracting(Change::text)
                .satisfiesExactly(
                        first -> assertThat(first).isEqualTo("Mobility (Mon 1 Mar 16:00) moves to Tue 2 Mar 09:00."),
                        second -> assertThat(second)
                                .startsWith("Heavy lower, knee-dominant (Tue 2 Mar 17:00) is dropped"),
                        third -> assertThat(third).isEqualTo("Mobility (Wed 3 Mar 16:00) moves to Thu 4 Mar 16:00."),
                        fourth -> assertThat(fourth).isEqualTo("Mobility is added on Fri 5 Mar 16:00."));
        assertThat(compared(before, after).text())
                .startsWith(
                        "2 sessions move, 1 is added and 1 is dropped, and the plan is worse: key work falls short by"
                                + " 1 more");
    }

    @Test
    void the_group_is_named_where_there_are_several() {
        Squad before = at("2027-03-02T17:00").group("juniors");
        assertThat(change(before, at("2027-03-02T18:00")))
                .isEqualTo("Squad: Heavy lower, knee-dominant (Tue 2 Mar 17:00) moves to 18:00.");
    }

    // --- rules ---

    @Test
    void a_wish_that_is_met_now_and_one_that_was() {
        Comparison better = compared(at("2027-03-02T16:00"), at("2027-03-02T17:00"));
        assertThat(better.better())
                .containsExactly(new Shift(
                        "preferred-time",
                        RuleLevel.WANT,
                        2,
                        0,
                        "The hours preferred: met now; it cost 2 points. Before: Heavy lower, knee-dominant (Tue 2 Mar"
                                + " 16:00) lies 60 min outside the hours preferred for it, 17:00 to 19:00."));
        assertThat(better.worse()).isEmpty();
        assertThat(better.text())
                .isEqualTo("1 session moves, and the plan is better: 2 points fewer of wishes are unmet.");
        Comparison worse = compared(at("2027-03-02T17:00"), at("2027-03-02T16:00"));
        assertThat(worse.worse())
                .extracting(Shift::text)
                .containsExactly("The hours preferred: costs 2 points; it was met before. Now: Heavy lower,"
                        + " knee-dominant (Tue 2 Mar 16:00) lies 60 min outside the hours preferred for it, 17:00 to"
                        + " 19:00.");
        assertThat(worse.text())
                .isEqualTo("1 session moves, and the plan is worse: 2 points more of wishes are unmet.");
    }

    @Test
    void a_wish_that_costs_more_or_less_than_before() {
        Squad before = squad().fixture("cup-tie", "2027-03-06T15:00")
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-03T10:00");
        Squad after = squad().placed("heavy-lower-knee", "2027-03-03T12:00");
        assertThat(compared(before, after).worse())
                .extracting(Shift::text)
                .containsExactly("Preferred hours before a fixture: costs 24 points instead of 20. Now: Heavy lower,"
                        + " knee-dominant (Wed 3 Mar 12:00) ends 74 h before Cup tie; 96 h are wanted, and 92 h count as"
                        + " enough.");
        assertThat(compared(before, after).better()).isEmpty();
    }

    @Test
    void what_must_hold() {
        Squad good = at("2027-03-02T17:00");
        Comparison broken = compared(good, at("2027-03-05T17:00"));
        assertThat(broken.worse())
                .extracting(Shift::text)
                .containsExactly(
                        "Inside the group's hours: broken once; it held before. Now: Heavy lower, knee-dominant"
                                + " (Fri 5 Mar 17:00) has 60 min outside the hours in which Squad can train.");
        assertThat(broken.text())
                .isEqualTo("1 session moves, and the plan is worse: 1 thing more is broken that must hold.");
        assertThat(compared(at("2027-03-05T17:00"), at("2027-03-02T17:00")).better())
                .extracting(Shift::text)
                .containsExactly("Inside the group's hours: holds now; it was broken once. Before: Heavy lower,"
                        + " knee-dominant (Fri 5 Mar 17:00) has 60 min outside the hours in which Squad can train.");
    }

    @Test
    void what_is_owed() {
        Squad before = squad().aim("mobility", 3, 3, 3).placed("mobility", "2027-03-01T16:00");
        Squad after = squad().placed("mobility", "2027-03-01T16:00").placed("mobility", "2027-03-03T16:00");
        assertThat(compared(before, after).better())
                .extracting(Shift::text)
                .containsExactly(
                        "The least of an aim: key work falls short by 1 instead of 2. Before: Mobility: 1 in the"
                                + " week from Mon 1 Mar; at least 3 are owed.");
        assertThat(ComparisonWording.shift(RuleLevel.MAIN, 20, 0))
                .isEqualTo("no main work falls short any more; it did by 2.");
        assertThat(ComparisonWording.shift(RuleLevel.KEY, 0, 10))
                .isEqualTo("key work falls short by 1; it did not before.");
        assertThat(ComparisonWording.shift(RuleLevel.MUST, 30, 20)).isEqualTo("broken twice instead of 3 times.");
    }

    /** What is gravest is told first, then what makes the greatest difference. */
    @Test
    void rules_are_told_gravest_first() {
        Squad before = at("2027-03-05T16:00");
        assertThat(compared(before, at("2027-03-02T17:00")).better())
                .extracting(Shift::rule)
                .containsExactly("inside-window", "preferred-time");
    }

    // --- a scenario that has changed ---

    @Test
    void what_a_change_broke_by_itself_and_how_it_stands_now() {
        Squad before = at("2027-03-02T17:00");
        Squad after = at("2027-03-03T16:00").closed("weights-room", "2027-03-02T00:00", "2027-03-03T00:00");
        Comparison comparison = afterChange(before, after);
        assertThat(comparison.broke())
                .containsExactly("Heavy lower, knee-dominant (Tue 2 Mar 17:00) has 60 min outside the opening hours of"
                        + " Weights room.");
        assertThat(comparison.before()).isEqualTo(new Totals(0, 0, 0, 0));
        assertThat(comparison.changed()).isEqualTo(new Totals(1, 0, 0, 0));
        assertThat(comparison.after()).isEqualTo(new Totals(0, 0, 0, 2));
        assertThat(comparison.worse()).extracting(Shift::rule).containsExactly("preferred-time");
        assertThat(comparison.text())
                .isEqualTo("By itself the change breaks 1 thing that must hold; with 1 session moved nothing is broken"
                        + " that must hold and 2 points more of wishes are unmet than before.");
    }

    @Test
    void a_change_that_breaks_nothing() {
        Squad before = at("2027-03-02T17:00");
        Squad after = at("2027-03-02T17:00").closed("weights-room", "2027-03-03T00:00", "2027-03-04T00:00");
        assertThat(afterChange(before, after).text())
                .isEqualTo(
                        "By itself the change breaks nothing; with no session changed nothing is broken that must hold"
                                + " and as many wishes are unmet as before.");
        assertThat(afterChange(before, after).broke()).isEmpty();
    }

    @Test
    void what_a_moved_fixture_adds_to_wishes_and_what_is_owed_in_the_end() {
        Squad before = at("2027-03-02T17:00").aim("mobility", 2, 2, 2).fixture("cup-tie", "2027-03-06T15:00");
        Squad after = lifting().aim("mobility", 2, 2, 2).fixture("cup-tie", "2027-03-04T19:00");
        Comparison comparison = afterChange(before, after);
        assertThat(comparison.text())
                .isEqualTo(
                        "By itself the change breaks 1 thing that must hold and adds 82 points of wishes unmet; with 1"
                                + " session dropped nothing is broken that must hold, key work falls short by 3 (1 more than before) and as many wishes are unmet as"
                                + " before.");
    }

    @Test
    void a_change_that_mends_one_wish_and_breaks_another() {
        Squad before = at("2027-03-02T17:00").fixture("cup-tie", "2027-03-05T12:00");
        Squad after = at("2027-03-02T17:00").prefers("18:00", "20:00").fixture("cup-tie", "2027-03-06T15:00");
        Comparison comparison = afterChange(before, after);
        assertThat(comparison.broke()).hasSize(1);
        assertThat(comparison.text())
                .startsWith("By itself the change breaks nothing that must hold and costs no more in all; with no");
    }

    /** That wished-for hours are missed goes without saying where the fewest hours are missed as well. */
    @Test
    void what_breaks_a_must_is_not_told_as_a_wish_again() {
        Squad before = at("2027-03-02T17:00").fixture("cup-tie", "2027-03-06T15:00");
        Squad after = lifting().fixture("cup-tie", "2027-03-04T15:00");
        assertThat(afterChange(before, after).broke())
                .containsExactly("Heavy lower, knee-dominant (Tue 2 Mar 17:00) ends 45 h before Cup tie; it must end at"
                        + " least 64 h before.");
    }

    /** What was broken before and is not made worse is no news. */
    @Test
    void what_was_broken_already_is_not_blamed_on_the_change() {
        Squad before = at("2027-03-05T17:00");
        Squad after = at("2027-03-05T17:00").fixture("cup-tie", "2027-03-14T15:00");
        assertThat(afterChange(before, after).broke()).isEmpty();
        assertThat(afterChange(before, after).text())
                .isEqualTo(
                        "By itself the change breaks nothing; with no session changed 1 thing is broken that must hold"
                                + " and as many wishes are unmet as before.");
    }
}
