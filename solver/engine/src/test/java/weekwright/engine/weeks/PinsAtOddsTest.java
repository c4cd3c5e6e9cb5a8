package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.testing.Squad;
import weekwright.engine.testing.Verdict;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.StaffMember;
import weekwright.model.scenario.Weekday;

/**
 * Pins that are at odds with each other, with the aim or with the rules are kept and said. Common practice, no source: a
 * coach's word stands.
 */
class PinsAtOddsTest {
    private static Placement only(Plan plan) {
        assertThat(plan.placements()).hasSize(1);
        return plan.placements().get(0);
    }

    private static List<String> musts(Plan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.level() == RuleLevel.MUST)
                .map(Finding::rule)
                .distinct()
                .toList();
    }

    @Test
    void two_sessions_held_on_the_same_people_at_one_time_are_both_kept() {
        Plan plan = squad().aim("technique", 0, 1, 1)
                .aim("trunk-and-balance", 0, 1, 1)
                .placed("technique", "2027-03-02T10:00")
                .held("start")
                .placed("trunk-and-balance", "2027-03-02T10:00")
                .held("start")
                .proposed(200);
        assertThat(plan.placements())
                .extracting(Placement::start)
                .containsOnly(Moment.parse("2027-03-02T10:00"))
                .hasSize(2);
        assertThat(musts(plan)).containsExactly("one-place-at-a-time");
    }

    @Test
    void a_day_that_is_held_and_barred_is_kept_and_told() {
        Squad squad = squad().aim("technique", 0, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .held("day")
                .notOn("2027-03-04");
        Plan plan = squad.proposed(200);
        assertThat(only(plan).start().date()).isEqualTo(LocalDate.parse("2027-03-04"));
        assertThat(new Verdict(Engine.judge(squad.scenario(), plan)).amounts("pins"))
                .containsExactly(told(1, 0));
        assertThat(only(plan).pin()).isEqualTo(Squad.pin(List.of(LocalDate.parse("2027-03-04")), "day"));
    }

    @Test
    void a_session_on_a_barred_day_is_told_and_moved_by_the_next_search() {
        Squad squad = squad().aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .notOn("2027-03-04");
        assertThat(squad.found("pins")).containsExactly(told(1, 0));
        Plan plan = squad.proposed(200);
        assertThat(only(plan).start().date()).isNotEqualTo(LocalDate.parse("2027-03-04"));
        assertThat(plan.findings()).extracting(Finding::rule).doesNotContain("pins");
    }

    @Test
    void a_barred_day_moves_what_else_of_a_session_is_held() {
        Plan plan = squad().aim("technique", 0, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .at("turf-pitch")
                .held("facility")
                .notOn("2027-03-04")
                .proposed(200);
        assertThat(only(plan).start().date()).isNotEqualTo(LocalDate.parse("2027-03-04"));
        assertThat(only(plan).facility()).isEqualTo("turf-pitch");
    }

    @Test
    void a_session_barred_everywhere_is_left_out_unless_something_holds_it() {
        String[] all = LocalDate.parse("2027-03-01")
                .datesUntil(LocalDate.parse("2027-03-08"))
                .map(LocalDate::toString)
                .toArray(String[]::new);
        Squad free = squad().aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .notOn(all);
        assertThat(free.proposed(200).placements()).isEmpty();
        Plan held = squad().aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .held("dose")
                .notOn(all)
                .proposed(200);
        assertThat(only(held).start()).isEqualTo(Moment.parse("2027-03-04T10:00"));
    }

    @Test
    void a_session_that_must_stay_placed_leaves_the_hours_allowed_before_it_lies_on_a_barred_day() {
        Plan plan = squad().window("10:00", "12:00", Weekday.THU)
                .aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .held("dose")
                .notOn("2027-03-04")
                .proposed(200);
        assertThat(only(plan).start().date()).isNotEqualTo(LocalDate.parse("2027-03-04"));
        assertThat(musts(plan)).containsExactly("inside-window");
    }

    @ParameterizedTest
    @ValueSource(strings = {"start", "day", "facility", "lead", "dose", "variant"})
    void held_out_and_anything_else_of_it_held_is_told(String what) {
        Squad squad = squad().aim("technique", 1, 1, 1).placed("technique", "2027-03-04T10:00");
        assertThat(squad.held("out", what).found("pins")).containsExactly(told(1, 0));
        assertThat(squad.held("out").found("pins")).as("held out and no more").isEmpty();
    }

    @Test
    void held_out_and_held_at_once_a_session_stays_out() {
        Squad squad = squad().aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .held("out", "start");
        assertThat(squad.found("pins")).containsExactly(told(1, 0));
        Plan plan = squad.proposed(200);
        assertThat(plan.placements()).isEmpty();
        assertThat(plan.leftOut()).extracting(LeftOut::pin).containsExactly(Squad.pin(List.of(), "out"));
        assertThat(plan.findings()).extracting(Finding::rule).contains("pins");
    }

    @Test
    void a_lead_held_who_is_away_keeps_the_session_where_that_is_held() {
        StaffMember away = new StaffMember(
                "ash",
                "Ash",
                List.of("technique"),
                1,
                List.of(),
                List.of(Squad.absence("2027-03-04T00:00", "2027-03-04T23:00")));
        Squad squad = squad().staff(away)
                .staff("birch", "technique")
                .aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T10:00")
                .ledBy("ash")
                .held("start", "lead");
        Plan plan = squad.proposed(200);
        assertThat(only(plan).lead()).isEqualTo("ash");
        assertThat(only(plan).start()).isEqualTo(Moment.parse("2027-03-04T10:00"));
        assertThat(musts(plan)).containsExactly("lead-free");
        Plan moved = squad.held("lead").proposed(200);
        assertThat(only(moved).lead()).isEqualTo("ash");
        assertThat(musts(moved)).isEmpty();
    }

    @Test
    void a_dose_held_that_the_aim_does_not_allow_is_kept_and_told() {
        Squad squad = squad().window("10:00", "12:00")
                .aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T18:00")
                .dose(Dose.MICRO)
                .held("dose");
        assertThat(squad.found("pins")).containsExactly(told(1, 0));
        Plan plan = squad.proposed(200);
        assertThat(only(plan).dose()).isEqualTo(Dose.MICRO);
        assertThat(only(plan).start()).as("it moves into the window").isNotEqualTo(Moment.parse("2027-03-04T18:00"));
        assertThat(musts(plan)).isEmpty();
        squad.doses(Dose.FULL, Dose.MICRO);
        assertThat(squad.found("pins")).isEmpty();
    }

    @Test
    void a_start_held_off_the_grid_and_outside_all_hours_is_kept() {
        Plan plan = squad().window("10:00", "12:00")
                .aim("technique", 1, 1, 1)
                .placed("technique", "2027-03-04T18:07")
                .held("start")
                .proposed(200);
        assertThat(only(plan).start()).isEqualTo(Moment.parse("2027-03-04T18:07"));
        assertThat(musts(plan)).containsExactly("inside-window");
    }

    @Test
    void a_place_held_that_does_not_fit_is_kept() {
        Plan plan = squad().aim("heavy-lower-knee", 1, 1, 1)
                .placed("heavy-lower-knee", "2027-03-04T18:00")
                .at("turf-pitch")
                .held("facility")
                .proposed(200);
        assertThat(only(plan).facility()).isEqualTo("turf-pitch");
        assertThat(musts(plan)).containsExactly("facility-fits");
    }

    @Test
    void what_stands_in_the_way_is_the_same_to_check_as_to_propose() {
        Squad squad = squad().staff("ash", "technique", "mobility")
                .staff("birch", "*")
                .window("10:00", "11:00", Weekday.TUE)
                .aim("technique", 1, 1, 1)
                .aim("tempo-run", 1, 1, 1)
                .group("guests")
                .window("10:00", "11:00", Weekday.TUE)
                .aim("mobility", 1, 1, 1)
                .aim("heavy-lower-knee", 1, 1, 1);
        Plan plan = squad.proposed(500);
        assertThat(plan.leftOut()).isNotEmpty();
        Plan checked = Engine.judge(squad.scenario(), plan).plan();
        assertThat(checked.leftOut()).isEqualTo(plan.leftOut());
        assertThat(checked.totals()).isEqualTo(plan.totals());
        assertThat(checked.placements()).isEqualTo(plan.placements());
    }
}
