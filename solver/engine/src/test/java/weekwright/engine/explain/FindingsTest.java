package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Amount.told;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.testing.RuleExamples;
import weekwright.engine.testing.Squad;
import weekwright.engine.testing.Verdict;
import weekwright.model.plan.Finding;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Pathway;
import weekwright.model.scenario.RestrictionLimit;

/** Who and what a finding is about, when and where, for one rule of each kind of view. */
class FindingsTest {
    private static final LocalDate MONDAY = LocalDate.parse("2027-03-01");

    private static Finding finding(Squad squad, String rule) {
        return squad.judged().only(rule);
    }

    private static String id(String family, int number) {
        return "squad/" + family + "/2027-03-01/" + number;
    }

    @Test
    void a_session_by_itself() {
        Finding open = finding(RuleExamples.of("facility-open"), "facility-open");
        assertThat(open.groups()).containsExactly("squad");
        assertThat(open.heads()).isEqualTo(10);
        assertThat(open.placements()).containsExactly(id("heavy-lower-knee", 1));
        assertThat(open.facility()).isEqualTo("weights-room");
        assertThat(open.week()).isEqualTo(MONDAY);
        assertThat(open.day()).isEqualTo("2027-03-02");
        assertThat(open.unit()).isEqualTo("min");
        // A rule that is not about places names none.
        assertThat(finding(RuleExamples.of("inside-window"), "inside-window").facility())
                .isNull();
    }

    @Test
    void a_session_that_is_gone() {
        Squad gone = squad().aim("technique", 0, 1, 1);
        Squad known = squad().aim("technique", 0, 1, 1).placed("technique", "2027-03-02T10:00");
        Finding finding = finding(gone.closeTo(known, null), "keep-plan");
        assertThat(finding.placements()).containsExactly(id("technique", 1));
        assertThat(finding.day()).isEqualTo("2027-03-02");
    }

    @Test
    void a_pair_of_sessions() {
        Squad squad = RuleExamples.of("pathway-gap")
                .heads(2)
                .athlete("ash")
                .athlete("birch")
                .restricted(RestrictionLimit.LIGHT, "2027-03-05", "2027-03-05", Pathway.MAX_VELOCITY_SPRINT);
        Finding finding = finding(squad, "pathway-gap");
        assertThat(finding.athletes()).containsExactly("ash");
        assertThat(finding.heads()).isEqualTo(1);
        assertThat(finding.placements()).containsExactly(id("max-velocity", 1), id("max-velocity", 2));
        assertThat(finding.week()).isEqualTo(MONDAY);
        assertThat(finding.day()).isEqualTo("2027-03-02");
        assertThat(finding.unit()).isEqualTo("h");
    }

    @Test
    void a_pair_with_a_fixture_a_commitment_or_history() {
        Finding fixture = finding(RuleExamples.of("before-fixture"), "before-fixture");
        assertThat(fixture.placements()).containsExactly(id("max-velocity", 1));
        assertThat(fixture.fixtures()).containsExactly("cup-tie");
        assertThat(fixture.day()).isEqualTo("2027-03-04");

        Squad practice = squad().practice("team", "2027-03-02T09:00").placed("acceleration", "2027-03-02T14:00");
        Finding order = finding(practice, "freshest-first");
        assertThat(order.commitments()).containsExactly("team");
        assertThat(order.unit()).isEqualTo("place in the order");

        Squad past = squad().done("max-velocity", "2027-02-28T17:00").placed("max-velocity", "2027-03-02T09:00");
        Finding history = finding(past, "pathway-gap-floor");
        assertThat(history.history()).containsExactly("squad/max-velocity/2027-02-28T17:00");
        assertThat(history.placements()).containsExactly(id("max-velocity", 1));
        assertThat(history.day()).as("the day of what can be moved").isEqualTo("2027-03-02");
    }

    @Test
    void a_pair_of_two_groups_is_told_to_the_later() {
        Squad squad = squad().quorum(1)
                .group("sprinters")
                .quorum(1)
                .athlete("ash", Squad.ID, "sprinters")
                .placed("technique", "2027-03-02T10:00")
                .placed("trunk-and-balance", "2027-03-02T10:20")
                .of("sprinters");
        Finding finding = finding(squad, "one-place-at-a-time");
        assertThat(finding.groups()).containsExactly("sprinters");
        assertThat(finding.athletes()).containsExactly("ash");
        assertThat(finding.placements())
                .containsExactly(id("technique", 1), "sprinters/trunk-and-balance/2027-03-01/1");
    }

    @Test
    void a_day() {
        Squad squad = squad().commitment("lecture", null, "2027-03-02T20:00").practice("team", "2027-03-02T08:00");
        Finding finding = finding(
                squad.placed("technique", "2027-03-02T12:00").placed("mobility", "2027-03-02T18:00"), "visits-per-day");
        assertThat(finding.placements()).containsExactly(id("technique", 1), id("mobility", 1));
        assertThat(finding.commitments()).containsExactly("team");
        assertThat(finding.week()).isEqualTo(MONDAY);
        assertThat(finding.day()).isEqualTo("2027-03-02");
        assertThat(finding.unit()).isEqualTo("visits");
    }

    @Test
    void a_night() {
        Squad squad = RuleExamples.of("night-rest")
                .placed("trunk-and-balance", "2027-03-02T10:00")
                .placed("tempo-run", "2027-03-03T12:00");
        Finding finding = finding(squad, "night-rest");
        assertThat(finding.placements()).containsExactly(id("technique", 1), id("mobility", 1));
        assertThat(finding.week()).isEqualTo(MONDAY);
        assertThat(finding.day()).as("two days").isNull();
    }

    @Test
    void a_run_of_days_names_its_hard_work() {
        Squad squad = RuleExamples.of("three-high-days").placed("technique", "2027-03-03T08:00");
        Finding finding = finding(squad, "three-high-days");
        assertThat(finding.placements())
                .containsExactly(id("lower-hypertrophy", 1), id("lower-hypertrophy", 2), id("lower-hypertrophy", 3));
        assertThat(finding.day()).isNull();
        assertThat(finding.unit()).isEqualTo("days");
        Finding blocks = finding(RuleExamples.of("high-block-floor"), "high-block-floor");
        assertThat(blocks.placements()).containsExactly(id("lower-hypertrophy", 1), id("acceleration", 1));
    }

    @Test
    void a_week() {
        Squad squad = squad().days(14).highDays(1, 1, 2).fixture("cup-tie", "2027-03-03T15:00");
        Finding finding = finding(squad, "high-days-least");
        assertThat(finding.week()).isEqualTo("2027-03-08");
        assertThat(finding.day()).isNull();
        assertThat(finding.placements()).isEmpty();
        assertThat(finding.level()).isEqualTo(RuleLevel.KEY);
    }

    @Test
    void the_days_round_a_fixture() {
        Finding load = finding(RuleExamples.of("load-falls-to-fixture"), "load-falls-to-fixture");
        assertThat(load.fixtures()).containsExactly("cup-tie");
        assertThat(load.placements()).containsExactly(id("technique", 1), id("tempo-run", 1));
        assertThat(load.unit()).isEqualTo("AU");
        Squad past = squad().done("fixture", "2027-02-27T15:00").placed("technique", "2027-03-01T10:00");
        Finding free = finding(past, "free-day-place");
        assertThat(free.history()).containsExactly("squad/fixture/2027-02-27T15:00");
        assertThat(free.placements()).containsExactly(id("technique", 1));
    }

    @Test
    void an_aim_in_its_week() {
        Finding finding = finding(RuleExamples.of("aim-most"), "aim-most");
        assertThat(finding.placements()).containsExactly(id("technique", 1), id("technique", 2));
        assertThat(finding.week()).isEqualTo(MONDAY);
        assertThat(finding.day()).isNull();
        assertThat(finding.unit()).isEqualTo("sessions");
        assertThat(finding.heads()).isEqualTo(10);
    }

    @Test
    void a_line_of_exposures_belongs_to_nobodys_session() {
        Squad squad = RuleExamples.of("speed-exposure");
        Finding finding = finding(squad, "speed-exposure");
        assertThat(finding.placements()).isEmpty();
        assertThat(finding.day()).isNull();
        assertThat(finding.unit()).isEqualTo("days");
    }

    @Test
    void bookings_that_fill_a_place() {
        Squad squad = squad().room("weights-room", 1, null)
                .commitment("induction", "technique", "2027-03-02T18:00")
                .at("weights-room")
                .group("sprinters")
                .placed("heavy-lower-hip", "2027-03-02T18:30")
                .of("sprinters");
        Finding finding = finding(squad, "facility-room");
        assertThat(finding.groups()).containsExactly("sprinters");
        assertThat(finding.facility()).isEqualTo("weights-room");
        assertThat(finding.commitments()).containsExactly("induction");
        assertThat(finding.placements()).containsExactly("sprinters/heavy-lower-hip/2027-03-01/1");
        assertThat(finding.day()).isEqualTo("2027-03-02");
        assertThat(finding.unit()).isEqualTo("groups or athletes");
    }

    @Test
    void a_session_that_nobody_leads() {
        Finding finding = finding(RuleExamples.of("lead-free"), "lead-free");
        assertThat(finding.groups()).containsExactly("sprinters");
        assertThat(finding.placements()).containsExactly("sprinters/max-velocity/2027-03-01/1");
        assertThat(finding.unit()).isEqualTo("leads");
    }

    @Test
    void findings_stand_by_level_and_the_dearest_first() {
        Verdict verdict = squad().aim("technique", 1, 1, 1)
                .fixture("cup-tie", "2027-03-06T10:00")
                .practice("captains-run", "2027-03-05T18:00")
                .placed("max-velocity", "2027-03-04T18:00")
                .placed("small-sided-games", "2027-03-05T10:00")
                .judged();
        List<RuleLevel> levels = verdict.findings().stream().map(Finding::level).toList();
        assertThat(levels).isSorted().contains(RuleLevel.MUST, RuleLevel.KEY, RuleLevel.WANT, RuleLevel.TOLD);
        assertThat(verdict.findings().stream()
                        .filter(finding -> finding.level() == RuleLevel.WANT)
                        .map(finding -> -finding.cost()))
                .isSorted();
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
