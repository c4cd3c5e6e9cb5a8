package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.explain.Judged;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Placement;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.SeasonFile;

/**
 * An invented squad round real fixtures of two professional football clubs in 2024-25 (openfootball public football data,
 * CC0 1.0; clubs and competitions replaced by codes).
 */
class RealFixturesTest {
    @Test
    void a_quiet_fortnight_is_planned_without_breaking_what_must_hold() {
        SeasonFile club = SeasonFile.club(1);
        Judged plan = propose(club.stretch(club.quietFortnight(), 14));

        assertThat(plan.plan().totals().must()).isZero();
        assertThat(plan.plan().totals().key()).isZero();
        assertThat(plan.plan().placements()).hasSizeGreaterThan(10);
    }

    @Test
    void the_shortest_turnaround_is_planned_and_says_what_it_cannot_hold() {
        SeasonFile club = SeasonFile.club(3);
        assertThat(club.gaps().stream().min(Duration::compareTo)).contains(Duration.ofMinutes(51 * 60 + 15));
        LocalDate first = club.fortnightOfShortestGap();
        Judged plan = propose(club.stretch(first, 14));

        assertThat(plan.plan().totals().must()).isZero();
        assertThat(plan.plan().leftOut())
                .extracting(LeftOut::text)
                .allMatch(text -> text.contains("stands in the way") || text.contains("nothing that must hold"));
        // Source: nothing high within 40 h of a match on either side, expert proposal on Silva et al. 2018 and Thomas
        // et al. 2017: between matches 49 h 25 min apart, whistle to kick-off, no room is left for it.
        assertThat(plan.plan().placements())
                .filteredOn(p -> p.start().date().isAfter(LocalDate.of(2024, 9, 21))
                        && p.start().date().isBefore(LocalDate.of(2024, 9, 25)))
                .extracting(Placement::family)
                .doesNotContain(
                        "max-velocity", "acceleration", "heavy-lower-knee", "heavy-lower-hip", "full-body-strength");
    }

    private static Judged propose(Scenario scenario) {
        return Engine.propose(new Proposal(scenario, null, Budget.moves(40_000), 1, 2, null), Progress.SILENT);
    }
}
