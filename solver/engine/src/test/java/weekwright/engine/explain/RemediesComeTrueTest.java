package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Engine;
import weekwright.engine.Proposal;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.rules.Judge;
import weekwright.engine.search.Budget;
import weekwright.engine.search.Progress;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Placement;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Remedy;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/**
 * What would help does help: each remedy is carried out on the documents, from its sentences alone, and what comes of it
 * is judged from nothing. The totals have changed by what was promised, and the rule is broken less often.
 */
class RemediesComeTrueTest {
    private static final int RANDOM_PLANS = 12;
    private static final int MOST_CARRIED_OUT = 12;

    static List<String> demos() {
        return Scenarios.all().stream().map(Demo::name).toList();
    }

    /** Early plans of every demo: a search that is cut short leaves something to mend. */
    @ParameterizedTest
    @MethodSource("demos")
    void of_every_demo(String demo) {
        Scenario scenario = Scenarios.read(demo);
        Proposal proposal = new Proposal(scenario, null, Budget.moves(200), 1, 1, null);
        Judged judged = Engine.propose(proposal, Progress.SILENT);

        assertAllComeTrue(demo, scenario, judged.plan());

        assertThat(judged.plan().findings())
                .as("a written plan has the same remedies as when it was made")
                .isEqualTo(Engine.judge(scenario, judged.plan()).plan().findings());
    }

    /** Plans that nobody would make: sessions anywhere, under any lead, most of them against the rules. */
    @Test
    void of_random_plans() {
        int comeTrue = 0;
        for (int seed = 1; seed <= RANDOM_PLANS; seed++) {
            Scenario scenario =
                    seed % 3 == 0 ? Scenarios.read(seed % 2 == 0 ? "clash" : "two-groups") : SquadGenerator.tiny(seed);
            Plan drawn = RandomPlans.randomPlan(scenario, new Random(seed));
            comeTrue += assertAllComeTrue(
                    "seed " + seed, scenario, Engine.judge(scenario, drawn).plan());
        }
        assertThat(comeTrue).isGreaterThan(100);
    }

    /** What a page does when a coach presses the button beside a remedy: the documents change as was promised. */
    @ParameterizedTest
    @ValueSource(strings = {"clash", "two-groups", "academy"})
    void carried_out_by_the_program(String demo) {
        Scenario scenario = Scenarios.read(demo);
        Plan plan = Engine.judge(scenario, RandomPlans.randomPlan(scenario, new Random(3)))
                .plan();
        Standing before = Standing.of(scenario, plan);
        int carriedOut = 0;
        for (int i = 0; i < plan.findings().size() && carriedOut < MOST_CARRIED_OUT; i++) {
            Finding finding = plan.findings().get(i);
            Remedied remedied = Engine.remedied(scenario, plan, i);
            assertThat(remedied == null).as(finding.text()).isEqualTo(finding.remedy() == null);
            if (remedied != null) {
                Remedy remedy = Objects.requireNonNull(finding.remedy());
                Standing after = Standing.of(remedied.scenario(), remedied.plan());
                assertThat(changed(before, after)).as(remedy.text()).isEqualTo(remedy.change());
                assertThat(after.broken(finding.rule())).as(remedy.text()).isLessThan(before.broken(finding.rule()));
                carriedOut++;
            }
        }
        assertThat(carriedOut).isGreaterThan(3);
    }

    /** What a remedy has chosen is held, as if it had been done by hand: the next search does not take it back. */
    @Test
    void what_is_carried_out_is_held() {
        Scenario scenario = Scenarios.read("clash");
        Plan plan = Engine.judge(scenario, RandomPlans.randomPlan(scenario, new Random(3)))
                .plan();
        int moving = IntStream.range(0, plan.findings().size())
                .filter(i -> says(plan.findings().get(i), "Move "))
                .findFirst()
                .orElseThrow();

        Plan then =
                Objects.requireNonNull(Engine.remedied(scenario, plan, moving)).plan();

        List<Placement> chosen = then.placements().stream()
                .filter(placed -> !plan.placements().contains(placed))
                .toList();
        assertThat(chosen).hasSize(1);
        assertThat(chosen.get(0).held().start()).isTrue();
    }

    private static boolean says(Finding finding, String words) {
        Remedy remedy = finding.remedy();
        return remedy != null && remedy.steps().stream().anyMatch(step -> step.startsWith(words));
    }

    /** Where nobody reads what would help, the plan is judged the same, and says that nothing was looked for. */
    @Test
    void a_plan_judged_without_remedies_is_the_same_but_for_them() {
        Scenario scenario = Scenarios.read("clash");
        Plan drawn = RandomPlans.randomPlan(scenario, new Random(1));
        Judged with = Engine.judge(scenario, drawn);
        Judged without = Engine.judgeWithoutRemedies(scenario, drawn);

        assertThat(without.plan().withFindings(List.of())).isEqualTo(with.plan().withFindings(List.of()));
        assertThat(without.kept()).isEqualTo(with.kept());
        assertThat(without.days()).isEqualTo(with.days());
        assertThat(without.plan().findings())
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("remedy", "noRemedy")
                .isEqualTo(with.plan().findings());
        assertThat(with.plan().findings()).anyMatch(finding -> finding.remedy() != null);
        assertThat(without.plan().findings()).noneMatch(finding -> finding.remedy() != null);
        assertThat(without.plan().findings().stream().map(Finding::noRemedy)).contains("No remedy was looked for.");
    }

    private static int assertAllComeTrue(String what, Scenario scenario, Plan plan) {
        int comeTrue = 0;
        Standing before = Standing.of(scenario, plan);
        assertThat(before.totals()).isEqualTo(plan.totals());
        for (Finding finding : plan.findings()) {
            Remedy remedy = finding.remedy();
            assertThat(String.valueOf(finding.noRemedy())).doesNotContain("before this one");
            if (remedy != null) {
                assertComesTrue(what + ": " + remedy.text(), scenario, plan, before, finding);
                comeTrue++;
            }
        }
        return comeTrue;
    }

    private static void assertComesTrue(String what, Scenario scenario, Plan plan, Standing before, Finding finding) {
        Remedy remedy = Objects.requireNonNull(finding.remedy());
        int meanings = Doing.meanings(scenario, plan, remedy.steps());
        Standing after = done(scenario, plan, remedy, 0);
        for (int which = 1; which < meanings && !changed(before, after).equals(remedy.change()); which++) {
            after = done(scenario, plan, remedy, which);
        }
        assertThat(changed(before, after)).as(what).isEqualTo(remedy.change());
        assertThat(after.broken(finding.rule())).as(what).isLessThan(before.broken(finding.rule()));
        for (String rule : remedy.adds()) {
            assertThat(after.broken(rule)).as("%s, adds %s", what, rule).isPositive();
        }
        for (String rule : after.count().keySet()) {
            boolean isNew = before.broken(rule) < after.broken(rule);
            assertThat(!isNew || remedy.adds().contains(rule))
                    .as("%s, says nothing of %s", what, rule)
                    .isTrue();
        }
    }

    private static Standing done(Scenario scenario, Plan plan, Remedy remedy, int which) {
        Doing doing = new Doing(scenario, plan, which);
        remedy.steps().forEach(doing::step);
        return Standing.of(doing.scenario(), doing.plan());
    }

    /** How a plan stands: its totals, and how often each rule is broken. */
    private record Standing(Totals totals, Map<String, Long> count) {
        static Standing of(Scenario scenario, Plan plan) {
            Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
            Judge judge = Judge.of(problem, Explanation.standing(problem));
            return new Standing(
                    judge.total().totals(),
                    FactSink.all(problem, judge).stream()
                            .filter(fact -> fact.level() != RuleLevel.TOLD)
                            .collect(Collectors.groupingBy(fact -> fact.rule().id(), Collectors.counting())));
        }

        long broken(String rule) {
            return count.getOrDefault(rule, 0L);
        }
    }

    private static Totals changed(Standing before, Standing after) {
        return new Totals(
                tenths(after.totals().must() - before.totals().must()),
                tenths(after.totals().key() - before.totals().key()),
                tenths(after.totals().main() - before.totals().main()),
                tenths(after.totals().want() - before.totals().want()));
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
