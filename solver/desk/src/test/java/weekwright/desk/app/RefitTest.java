package weekwright.desk.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Scenarios;

/** A plan after its scenario has changed. */
class RefitTest {
    private final Scenario week = Scenarios.read("one-match");
    private final String group = week.groups().get(0).id();

    private static Placement placed(String group, String start, String facility) {
        return new Placement(null, group, "mobility", Moment.parse(start), null, facility, null, Dose.FULL, null, null);
    }

    private Plan plan(Placement... placements) {
        return new Plan(1, week.id(), null, null, null, List.of(placements), List.of(), List.of(), null, List.of());
    }

    @Test
    void what_fits_stays_as_it_is() {
        Plan plan = plan(placed(group, "2027-02-09T10:00", null));

        Refit refit = Refit.of(plan, week);

        assertThat(refit.lost()).isZero();
        assertThat(refit.plan().placements()).isEqualTo(plan.placements());
    }

    @Test
    void sessions_of_a_group_that_is_gone_go_and_a_place_that_is_gone_is_only_forgotten() {
        Plan plan = plan(placed("old-group", "2027-02-09T10:00", null), placed(group, "2027-02-10T10:00", "old-shed"));

        Refit refit = Refit.of(plan, week);

        assertThat(refit.lost()).isEqualTo(1);
        assertThat(refit.plan().placements()).hasSize(1).allSatisfy(one -> {
            assertThat(one.group()).isEqualTo(group);
            assertThat(one.facility()).isNull();
        });
    }
}
