package weekwright.engine.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.engine.testing.Squad.squad;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.engine.testing.Squad;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.GroupKind;
import weekwright.model.scenario.Level;
import weekwright.model.scenario.Phase;
import weekwright.model.scenario.Weekday;

/**
 * A strength group over six weeks: no lift at its maximum beyond its run of 3 weeks (advanced) or 6 (trained), none used
 * only once where two are due, and the lift that is tested comes back within four weeks. Rotation every 1 to 3 or 3 to 6
 * weeks is common practice, no source; two exposures and four weeks are expert proposals, grounded in Kassiano et al.
 * 2022, JSCR 36:1753-1762.
 */
class LiftingWeeksTest {
    private static final LocalDate FIRST = LocalDate.parse("2027-03-01");

    private static Squad group(Level level) {
        return squad().days(42)
                .kind(GroupKind.STRENGTH)
                .phase(Phase.OFF_SEASON)
                .level(level)
                .window("16:00", "20:00", Weekday.MON, Weekday.WED, Weekday.THU, Weekday.SAT)
                .aim("heavy-lower-knee", 1, 1, 1)
                .aim("heavy-lower-hip", 1, 1, 1)
                // For three weeks now it is the squat that is tested.
                .done("heavy-lower-knee", "2027-02-08T17:00")
                .lift("back-squat")
                .done("heavy-lower-knee", "2027-02-15T17:00")
                .lift("back-squat")
                .done("heavy-lower-knee", "2027-02-22T17:00")
                .lift("back-squat");
    }

    @ParameterizedTest(name = "{0}, seed {1}")
    @CsvSource({"ADVANCED, 1", "ADVANCED, 2", "ADVANCED, 3", "TRAINED, 1", "TRAINED, 2", "TRAINED, 3"})
    void lifts_rotate_and_the_one_that_is_tested_comes_back(Level level, long seed) {
        Squad squad = group(level);
        Plan plan = Engine.propose(
                        new Proposal(squad.scenario(), null, Budget.moves(2_000), seed, 1, null), Progress.SILENT)
                .plan();

        assertThat(plan.findings())
                .extracting(Finding::rule)
                .doesNotContain("maximum-repeated", "variant-churn", "aim-least");
        for (String family : List.of("heavy-lower-knee", "heavy-lower-hip")) {
            List<Placement> line = plan.placements().stream()
                    .filter(placement -> placement.family().equals(family))
                    .toList();
            assertThat(line).as(family).hasSize(6);
            List<String> lifts = new ArrayList<>();
            if (family.equals("heavy-lower-knee")) {
                lifts.addAll(List.of("back-squat", "back-squat", "back-squat"));
            }
            line.forEach(placement -> lifts.add(placement.variant()));
            List<Integer> blocks = blocks(lifts);
            assertThat(blocks)
                    .as("weeks running of %s", lifts)
                    .allMatch(weeks -> weeks <= (level == Level.ADVANCED ? 3 : 6));
            assertThat(blocks.subList(0, blocks.size() - 1))
                    .allMatch(times -> times >= (level == Level.ADVANCED ? 1 : 2));
            assertThat(new TreeSet<>(lifts)).as("lifts rotate").hasSizeGreaterThan(line.size() < lifts.size() ? 1 : 0);
            assertThat(daysWithoutTested(line, family)).isLessThanOrEqualTo(28);
        }
        assertThat(Engine.judge(squad.scenario(), plan).plan().totals()).isEqualTo(plan.totals());
    }

    private static List<Integer> blocks(List<String> lifts) {
        List<Integer> blocks = new ArrayList<>();
        for (int i = 0; i < lifts.size(); i++) {
            if (i > 0 && lifts.get(i).equals(lifts.get(i - 1))) {
                blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1) + 1);
            } else {
                blocks.add(1);
            }
        }
        return blocks;
    }

    /** The longest time without the lift that is tested, the past and the end of the plan included. */
    private static long daysWithoutTested(List<Placement> line, String family) {
        boolean squat = family.equals("heavy-lower-knee");
        LocalDate since = squat ? LocalDate.parse("2027-02-22") : FIRST;
        long longest = 0;
        for (Placement placement : line) {
            if (placement.variant().equals(squat ? "back-squat" : "deadlift")) {
                longest = Math.max(
                        longest,
                        ChronoUnit.DAYS.between(since, placement.start().date()));
                since = placement.start().date();
            }
        }
        return Math.max(longest, ChronoUnit.DAYS.between(since, FIRST.plusDays(41)));
    }
}
