package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Pin;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** What the coach holds stays held, even where it breaks a rule; the rest stays as close as it can. */
class PinsTest {
    private static final Scenario SCENARIO = Scenarios.read("one-match");
    private static Plan plan;

    @BeforeAll
    static void aFirstPlan() {
        plan = propose(null);
    }

    @Test
    void a_session_held_at_its_start_stays_there() {
        Placement speed = placement(plan, "max-velocity");
        Plan held = with(speed, p -> at(p, Moment.parse(speed.start().date().plusDays(1) + "T10:00"), pin("start")));

        Plan again = propose(held);

        assertThat(placement(again, "max-velocity").start())
                .isEqualTo(Moment.parse(speed.start().date().plusDays(1) + "T10:00"));
    }

    @Test
    void a_session_held_on_its_day_keeps_the_day_and_may_change_its_hour() {
        Placement strength = placement(plan, "upper-strength");
        Moment awkward = Moment.parse(strength.start().date() + "T23:00");
        Plan again = propose(with(strength, p -> at(p, awkward, pin("day"))));

        Placement now = placement(again, "upper-strength");
        assertThat(now.start().date()).isEqualTo(strength.start().date());
        assertThat(now.start()).as("23:00 is outside all hours").isNotEqualTo(awkward);
        assertThat(now.pin()).isEqualTo(pin("day"));
    }

    @Test
    void a_session_held_in_its_facility_stays_in_it() {
        Placement tempo = placement(plan, "tempo-run");
        Plan again = propose(with(tempo, p -> at(p, p.start(), pin("facility"))));

        assertThat(placement(again, "tempo-run").facility()).isEqualTo(tempo.facility());
    }

    @Test
    void an_illegal_pin_is_kept_and_said() {
        Placement heavy = placement(plan, "heavy-lower-knee");
        Moment dayBefore = Moment.parse("2027-02-12T12:00");
        Plan again = propose(with(heavy, p -> at(p, dayBefore, pin("start"))));

        assertThat(placement(again, "heavy-lower-knee").start()).isEqualTo(dayBefore);
        assertThat(again.totals().must()).isPositive();
        assertThat(again.findings())
                .anyMatch(finding -> finding.rule().equals("before-fixture")
                        && finding.placements().contains(heavy.id()));
    }

    @Test
    void a_session_held_out_stays_out_and_is_said_to_be() {
        Placement tempo = placement(plan, "tempo-run");
        Plan out = propose(with(tempo, p -> at(p, p.start(), pin("out"))));
        assertThat(out.placements()).extracting(Placement::family).doesNotContain("tempo-run");
        assertThat(out.leftOut()).extracting(LeftOut::id).contains(tempo.id());

        Plan again = propose(out);
        assertThat(again.placements()).extracting(Placement::family).doesNotContain("tempo-run");
    }

    @Test
    void after_one_pin_the_rest_moves_little() {
        Placement trunk = placement(plan, "trunk-and-balance");
        Plan again = propose(with(trunk, p -> at(p, p.start(), pin("start"))));

        assertThat(again.placements())
                .extracting(Placement::start)
                .isEqualTo(plan.placements().stream().map(Placement::start).toList());
    }

    private static Plan propose(Plan from) {
        Proposal proposal = new Proposal(SCENARIO, from, Budget.moves(8_000), 1, 2, null);
        return Engine.propose(proposal, Progress.SILENT).plan();
    }

    private static Placement placement(Plan of, String family) {
        return of.placements().stream()
                .filter(placement -> placement.family().equals(family))
                .findFirst()
                .orElseThrow();
    }

    private static Plan with(Placement one, UnaryOperator<Placement> change) {
        List<Placement> changed = plan.placements().stream()
                .map(placement -> placement.equals(one) ? change.apply(placement) : placement)
                .toList();
        return new Plan(
                plan.weekwright(),
                plan.scenario(),
                plan.scenarioDigest(),
                null,
                plan.solver(),
                changed,
                plan.leftOut(),
                plan.softened(),
                plan.totals(),
                plan.findings());
    }

    private static Placement at(Placement p, Moment start, Pin pin) {
        return new Placement(
                p.id(), p.group(), p.family(), start, p.minutes(), p.facility(), p.lead(), p.dose(), p.variant(), pin);
    }

    private static Pin pin(String what) {
        return new Pin(
                what.equals("start"),
                what.equals("day"),
                what.equals("facility"),
                false,
                false,
                false,
                what.equals("out"),
                List.of());
    }
}
