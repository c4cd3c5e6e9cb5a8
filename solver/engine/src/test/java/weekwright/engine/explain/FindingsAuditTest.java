package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Finding;
import weekwright.model.plan.LeftOut;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Remedy;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;

/**
 * What must be true of all that is said, whatever the week: every finding has what was measured and what it was measured
 * against, every one says what would help or why nothing is offered, and all of it can be read aloud. (That each remedy does
 * what it promises is shown by {@link RemediesComeTrueTest}.)
 */
class FindingsAuditTest {
    private static final Pattern OF_THE_MACHINE = Pattern.compile(Rulebook.builtIn().rules().stream()
                    .map(Rule::id)
                    .filter(id -> id.contains("-"))
                    .collect(Collectors.joining("|", "\\b(", "|"))
            + "cohorts?|stimul(us|i)|slots?|constraints?|lexicographic|score|null|NaN)\\b");

    static List<String> demos() {
        return Scenarios.all().stream().map(Demo::name).toList();
    }

    private static Plan planned(Scenario scenario, long moves) {
        Proposal proposal = new Proposal(scenario, null, Budget.moves(moves), 1, 1, null);
        return Engine.propose(proposal, Progress.SILENT).plan();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void all_that_is_said_of_a_demo_is_measured_and_can_be_read_aloud(String demo) {
        Plan plan = planned(Scenarios.read(demo), 200);

        plan.findings().forEach(FindingsAuditTest::assertSound);
        assertThat(plan.leftOut()).allSatisfy(left -> assertReadable(left.text()));
    }

    /** Sessions anywhere: most rules are broken, and often more than once. */
    @Test
    void all_that_is_said_of_plans_that_nobody_would_make() {
        long rules = 0;
        for (String demo : List.of("one-match", "clash", "two-groups", "rotating-lifts", "under-15")) {
            Scenario scenario = Scenarios.read(demo);
            Plan plan = Engine.judge(scenario, RandomPlans.randomPlan(scenario, new Random(5)))
                    .plan();
            plan.findings().forEach(FindingsAuditTest::assertSound);
            rules += plan.findings().stream().map(Finding::rule).distinct().count();
        }
        assertThat(rules).as("rules broken in five plans, or this says little").isGreaterThan(50);
    }

    private static void assertSound(Finding finding) {
        String what = finding.rule() + ": " + finding.text();
        assertReadable(finding.text());
        assertThat(finding.unit()).as(what).isNotBlank();
        assertThat(finding.measured()).as(what).isFinite();
        assertThat(finding.limit()).as(what).isFinite();
        if (finding.level() != RuleLevel.TOLD) {
            assertThat(finding.measured()).as("%s: beyond what is wanted", what).isNotEqualTo(finding.limit());
        }
        assertThat(finding.remedy() == null).as(what).isNotEqualTo(finding.noRemedy() == null);
        Remedy remedy = finding.remedy();
        if (remedy == null) {
            assertReadable(Objects.requireNonNull(finding.noRemedy()));
        } else {
            assertJudged(what, finding.rule(), remedy);
        }
    }

    /** It has steps, and what it breaks besides is not what it mends. */
    private static void assertJudged(String what, String rule, Remedy remedy) {
        assertReadable(remedy.text());
        assertThat(remedy.steps()).as(what).isNotEmpty().allSatisfy(FindingsAuditTest::assertSays);
        assertThat(remedy.adds())
                .as("%s: %s", what, remedy.text())
                .doesNotHaveDuplicates()
                .doesNotContain(rule);
    }

    private static void assertSays(String step) {
        assertThat(step).isNotBlank().doesNotContainPattern(OF_THE_MACHINE);
    }

    /** A sentence, with a beginning and an end, and no name that only the program knows. */
    private static void assertReadable(String text) {
        assertThat(text).isNotBlank().matches("(?s)[\\p{Lu}\\p{N}\"].*\\.").doesNotContainPattern(OF_THE_MACHINE);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void where_nothing_has_changed_nothing_moves(String demo) {
        Scenario scenario = Scenarios.read(demo);
        Plan plan = planned(scenario, 3_000);
        assertThat(Objects.requireNonNull(plan.totals()).must()).isZero();

        Plan again = Engine.propose(new Proposal(scenario, plan, Budget.moves(5_000), 2, 2, null), Progress.SILENT)
                .plan();

        assertThat(again.placements()).isEqualTo(plan.placements());
        assertThat(again.leftOut().stream().map(LeftOut::id).toList())
                .isEqualTo(plan.leftOut().stream().map(LeftOut::id).toList());
        assertThat(Comparisons.of(scenario, plan, again).sessions()).isEmpty();
    }
}
