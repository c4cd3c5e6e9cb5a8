package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Remedy;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Weekday;

/** What would help with a finding, word for word. Starts lie on the full hour; heavy lower takes one. */
class RemedyTest {
    private static final String HEAVY = "Heavy lower, knee-dominant (Tue 2 Mar 16:00)";

    /** Heavy lower is owed once; it can lie from Monday to Wednesday between three hours of the clock. */
    private static Squad lifting() {
        return squad().window("16:00", "19:00", Weekday.MON, Weekday.TUE, Weekday.WED)
                .aim("heavy-lower-knee", 1, 1, 1);
    }

    private static Squad lifts() {
        return lifting().placed("heavy-lower-knee", "2027-03-02T16:00");
    }

    /** Heavy lower on Tuesday at four, when its hours end at half past. */
    private static Squad tooLate() {
        return squad().window("16:00", "16:30", Weekday.TUE)
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-02T16:00");
    }

    private static Squad theDayBefore(int least) {
        return squad().window("16:00", "17:00", Weekday.FRI)
                .aim("heavy-lower-knee", least, least, 1)
                .placed("heavy-lower-knee", "2027-03-05T16:00")
                .fixture("cup-tie", "2027-03-06T15:00");
    }

    private static StaffMember until(String id, String to) {
        return new StaffMember(id, "Cara", List.of("*"), 1, List.of(Squad.hours("08:00", to)), List.of());
    }

    private static Remedy remedy(Squad squad, String rule) {
        Finding finding = squad.judged().only(rule);
        assertThat(finding.noRemedy()).isNull();
        return Objects.requireNonNull(finding.remedy());
    }

    private static String help(Squad squad, String rule) {
        return remedy(squad, rule).text();
    }

    private static String noHelp(Squad squad, String rule) {
        Finding finding = squad.judged().only(rule);
        assertThat(finding.remedy()).isNull();
        return Objects.requireNonNull(finding.noRemedy());
    }

    @Test
    void another_time_of_the_day() {
        Remedy remedy = remedy(
                lifting().prefers("17:00", "19:00").placed("heavy-lower-knee", "2027-03-02T16:00"), "preferred-time");
        assertThat(remedy.text()).isEqualTo("Move " + HEAVY + " to Tue 2 Mar 17:00; saves 2 points.");
        assertThat(remedy.steps()).containsExactly("Move " + HEAVY + " to Tue 2 Mar 17:00");
        assertThat(remedy.change()).isEqualTo(new Totals(0, 0, 0, -2));
        assertThat(remedy.free()).isTrue();
        assertThat(remedy.adds()).isEmpty();
    }

    @Test
    void a_price_and_what_is_newly_broken_are_named() {
        Squad squad = lifting()
                .prefers("16:00", "17:00")
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .commitment("meeting", null, "2027-03-02T16:00")
                .commitment("other-meeting", null, "2027-03-01T16:00")
                .commitment("third-meeting", null, "2027-03-03T16:00");
        Remedy remedy = remedy(squad, "one-place-at-a-time");
        assertThat(remedy.text())
                .isEqualTo("Move " + HEAVY + " to Tue 2 Mar 17:00; mends 1 thing that must hold, costs 2 points more;"
                        + " newly broken: The hours preferred.");
        assertThat(remedy.adds()).containsExactly("preferred-time");
        assertThat(remedy.free()).isFalse();
    }

    @Test
    void what_is_missing_is_placed() {
        assertThat(help(lifting(), "aim-least"))
                .isEqualTo("Place Heavy lower, knee-dominant on Mon 1 Mar 16:00, at Weights room; key work falls short"
                        + " by 1 less.");
    }

    @Test
    void another_place() {
        Squad squad = lifting()
                .facility("barn", FacilityKind.GYM)
                .prefers(null, null, "barn")
                .placed("heavy-lower-knee", "2027-03-02T16:00");
        assertThat(help(squad, "preferred-facility")).isEqualTo("Hold " + HEAVY + " at Barn; saves 2 points.");
    }

    @Test
    void another_dose() {
        Squad squad = lifting()
                .doses(Dose.FULL, Dose.REDUCED)
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .dose(Dose.REDUCED);
        assertThat(help(squad, "dose-kept")).isEqualTo("Do " + HEAVY + " in a full dose; saves 4 points.");
    }

    @Test
    void another_lead() {
        Squad squad = lifts().ledBy("cara").staff(until("cara", "12:00")).staff("dora", "*");
        assertThat(help(squad, "lead-free")).isEqualTo("Let Dora lead " + HEAVY + "; mends 1 thing that must hold.");
        assertThat(remedy(squad.held("lead"), "lead-free").steps())
                .containsExactly("Unpin " + HEAVY, "Let Dora lead " + HEAVY);
    }

    @Test
    void another_time_under_another_lead() {
        Squad squad = lifting()
                .prefers("17:00", "19:00")
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .ledBy("cara")
                .staff(until("cara", "17:00"))
                .staff("dora", "*");
        assertThat(help(squad, "preferred-time"))
                .isEqualTo("Move " + HEAVY + " to Tue 2 Mar 17:00, led by Dora; saves 2 points.");
    }

    @Test
    void another_lift() {
        Squad squad = squad().days(28).level(Level.ADVANCED).window("16:00", "17:00", Weekday.TUE);
        squad.aim("heavy-lower-knee", 1, 1, 1);
        for (String day : List.of("02", "09", "16", "23")) {
            squad.placed("heavy-lower-knee", "2027-03-" + day + "T16:00").lift("back-squat");
        }
        assertThat(help(squad, "maximum-repeated"))
                .isEqualTo("Take Front squat for Heavy lower, knee-dominant (Tue 23 Mar 16:00); saves 10 points.");
    }

    @Test
    void what_is_pinned_is_let_go_first() {
        Squad squad = lifting()
                .prefers("17:00", "19:00")
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .pinned();
        Remedy remedy = remedy(squad, "preferred-time");
        assertThat(remedy.text()).isEqualTo("Unpin " + HEAVY + " and move it to Tue 2 Mar 17:00; saves 2 points.");
        assertThat(remedy.steps()).containsExactly("Unpin " + HEAVY, "Move " + HEAVY + " to Tue 2 Mar 17:00");
        assertThat(help(lifting().heldOut("squad/heavy-lower-knee/2027-03-01/1"), "aim-least"))
                .isEqualTo("Unpin Heavy lower, knee-dominant and place it on Mon 1 Mar 16:00, at Weights room; key work"
                        + " falls short by 1 less.");
    }

    @Test
    void a_day_that_is_barred_needs_the_coach() {
        Squad squad = squad().window("16:00", "17:00", Weekday.MON, Weekday.TUE)
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .commitment("meeting", null, "2027-03-02T16:00");
        assertThat(help(squad, "one-place-at-a-time"))
                .isEqualTo("Move " + HEAVY + " to Mon 1 Mar 16:00; mends 1 thing that must hold.");
        Squad barred = squad().window("16:00", "17:00", Weekday.MON, Weekday.TUE)
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .notOn("2027-03-01")
                .commitment("meeting", null, "2027-03-02T16:00");
        assertThat(help(barred, "one-place-at-a-time"))
                .isEqualTo("Unpin " + HEAVY + " and move it to Mon 1 Mar 16:00; mends 1 thing that must hold.");
    }

    @Test
    void leaving_out() {
        assertThat(help(theDayBefore(0), "before-fixture"))
                .isEqualTo("Leave out Heavy lower, knee-dominant (Fri 5 Mar 16:00); mends 1 thing that must hold, saves"
                        + " 168 points.");
        assertThat(help(theDayBefore(1), "before-fixture"))
                .isEqualTo("Leave out Heavy lower, knee-dominant (Fri 5 Mar 16:00); mends 1 thing that must hold, key"
                        + " work falls short by 1 more, saves 168 points; newly broken: The least of an aim.");
    }

    @Test
    void the_group_is_free_longer_or_earlier() {
        Remedy remedy = remedy(tooLate(), "inside-window");
        assertThat(remedy.text())
                .isEqualTo("Free Squad until 17:00 on Tue 2 Mar, 30 min longer; mends 1 thing that must hold.");
        assertThat(remedy.free()).isFalse();
        Squad early = squad().window("17:00", "17:30", Weekday.TUE)
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-02T16:15");
        assertThat(help(early, "inside-window"))
                .isEqualTo("Free Squad from 16:00 on Tue 2 Mar, 1 h earlier; mends 1 thing that must hold.");
    }

    @Test
    void a_place_is_open_longer_for_what_could_not_lie_anywhere() {
        Squad squad = squad().window("16:00", "18:00", Weekday.TUE)
                .open("weights-room", "16:00", "16:30")
                .aim("heavy-lower-knee", 1, 1, 1);
        Remedy remedy = remedy(squad, "aim-least");
        assertThat(remedy.text())
                .isEqualTo("Have Weights room open until 17:00 on Tue 2 Mar, 30 min longer, and place Heavy lower,"
                        + " knee-dominant on Tue 2 Mar 16:00, at Weights room; key work falls short by 1 less.");
        assertThat(remedy.steps())
                .containsExactly(
                        "Have Weights room open until 17:00 on Tue 2 Mar, 30 min longer",
                        "Place Heavy lower, knee-dominant on Tue 2 Mar 16:00, at Weights room");
    }

    @Test
    void a_lead_stays_longer() {
        assertThat(help(lifts().ledBy("cara").staff(until("cara", "16:30")), "lead-free"))
                .isEqualTo("Have Cara until 17:00 on Tue 2 Mar, 30 min longer; mends 1 thing that must hold.");
        assertThat(help(lifts().staff(until("cara", "16:30")), "lead-free"))
                .isEqualTo("Have Cara until 17:00 on Tue 2 Mar, 30 min longer, and let Cara lead " + HEAVY
                        + "; mends 1 thing that must hold.");
    }

    @Test
    void the_end_of_the_day_is_midnight() {
        Squad squad = squad().window("22:00", "23:30", Weekday.TUE)
                .aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-02T23:00");
        assertThat(help(squad, "inside-window"))
                .isEqualTo("Move Heavy lower, knee-dominant (Tue 2 Mar 23:00) to Tue 2 Mar 22:00; mends 1 thing that"
                        + " must hold.");
        assertThat(help(squad.pinned().commitment("meeting", null, "2027-03-02T22:00"), "inside-window"))
                .isEqualTo("Free Squad until 24:00 on Tue 2 Mar, 30 min longer; mends 1 thing that must hold.");
    }

    @Test
    void an_aim_is_dropped_where_nothing_else_is_left() {
        Squad squad = squad().window("16:00", "17:00", Weekday.FRI)
                .aim("heavy-lower-knee", 1, 1, 1)
                .fixture("cup-tie", "2027-03-06T15:00");
        assertThat(help(squad, "aim-least"))
                .isEqualTo("Drop the aim of Heavy lower, knee-dominant for Squad; key work falls short by 1 less.");
    }

    @Test
    void an_aim_is_dropped_with_its_sessions() {
        Squad squad = squad().window("16:00", "17:00", Weekday.FRI)
                .aim("heavy-lower-knee", 2, 2, 2)
                .placed("heavy-lower-knee", "2027-03-05T16:00")
                .fixture("cup-tie", "2027-03-07T18:00");
        assertThat(help(squad, "aim-least"))
                .isEqualTo("Drop the aim of Heavy lower, knee-dominant for Squad, and with it 1 session; mends 1 thing"
                        + " that must hold, key work falls short by 1 less, saves 82 points.");
    }

    @Test
    void a_group_is_named_where_there_are_several() {
        Squad squad = lifting()
                .prefers("17:00", "19:00")
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .group("others");
        assertThat(help(squad, "preferred-time"))
                .isEqualTo("Move Heavy lower, knee-dominant of Squad (Tue 2 Mar 16:00) to Tue 2 Mar 17:00; saves 2"
                        + " points.");
    }

    @Test
    void what_stands_in_the_way_of_a_remedy_is_counted() {
        Squad squad = squad().window("16:00", "17:00", Weekday.TUE)
                .aim("heavy-lower-knee", 0, 1, 1)
                .closed("weights-room", "2027-03-02T00:00", "2027-03-03T00:00");
        assertThat(noHelp(squad, "aim-target"))
                .isEqualTo("All 3 ways tried would clear it, but each breaks something else that must hold. What stands"
                        + " in the way: The place is open (3); Inside the group's hours (2).");
        assertThat(noHelp(theDayBefore(1), "day-before-light"))
                .isEqualTo("1 of the 3 ways tried would clear it, but that leaves more undone that is owed.");
    }

    @Test
    void nothing_clears_it() {
        Squad squad = squad().window("16:00", "17:00", Weekday.TUE).aim("heavy-lower-knee", 0, 2, 2);
        assertThat(noHelp(squad, "aim-target")).isEqualTo("None of the 3 ways tried clears it.");
    }

    @Test
    void what_costs_little_or_nothing_is_left_alone() {
        Squad squad = lifting()
                .staff("cara", "*")
                .prefers("16:30", "19:00")
                .placed("heavy-lower-knee", "2027-03-02T16:00")
                .weight("preferred-time", 0.9);
        assertThat(noHelp(squad, "preferred-time"))
                .isEqualTo("It costs less than 2 points, so no remedy was looked for.");
        Squad fixtures = squad().fixture("cup-tie", "2027-03-06T15:00").fixture("replay", "2027-03-07T15:00");
        assertThat(noHelp(fixtures, "fixtures-close")).isEqualTo("It costs nothing, so no remedy was looked for.");
    }

    @Test
    void no_more_ways_are_tried_than_can_be_waited_for() {
        Squad squad = squad().days(84).aim("heavy-lower-knee", 0, 1, 1).doses(Dose.FULL, Dose.REDUCED, Dose.MICRO);
        squad.priority(weekwright.model.scenario.Priority.SPARE);
        squad.aim("max-velocity", 1, 1, 1).doses(Dose.FULL, Dose.REDUCED, Dose.MICRO);
        squad.aim("acceleration", 1, 1, 1).doses(Dose.FULL, Dose.REDUCED, Dose.MICRO);
        List<Finding> findings = squad.judged().findings();
        assertThat(findings)
                .filteredOn(finding -> finding.rule().equals("aim-least"))
                .hasSize(24)
                .allMatch(finding -> finding.remedy() != null || finding.noRemedy() != null);
        assertThat(findings)
                .extracting(Finding::noRemedy)
                .contains(
                        "No remedy was looked for: the 10,000 ways that are tried for a plan went to dearer findings.");
    }
}
