package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.Engine;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.plan.Finding;
import weekwright.model.plan.Plan;
import weekwright.model.plan.Totals;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** The judge and a slow calculation that was written from the rules alone must say the same of any plan. */
class SecondCalculationTest {
    private static final int PLANS = Integer.getInteger("weekwright.plans", 60);

    static Stream<Scenario> scenarios() {
        Stream<Scenario> demos = Scenarios.all().stream().map(Demo::name).map(Scenarios::read);
        return Stream.concat(demos, Stream.of(1L, 2L, 3L).map(SquadGenerator::tiny));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void judge_and_second_calculation_agree_on_random_plans(Scenario scenario) {
        for (int seed = 1; seed <= PLANS; seed++) {
            Plan plan = RandomPlans.randomPlan(scenario, new Random(seed));
            Map<String, Long> judged = byRule(Engine.judge(scenario, plan).plan());
            Recalculation.Result second = Recalculation.of(scenario, Catalogue.builtIn(), Rulebook.builtIn(), plan);
            Map<String, Long> recalculated = new TreeMap<>();
            second.rules().forEach((rule, sum) -> recalculated.put(rule, sum.cost()));
            assertThat(judged).as("%s, plan of seed %d", scenario.id(), seed).isEqualTo(recalculated);
        }
    }

    private static Map<String, Long> byRule(Plan plan) {
        Map<String, Long> sums = new TreeMap<>();
        Map<String, Double> levels = new LinkedHashMap<>();
        for (Finding finding : plan.findings()) {
            long tenths = Math.round(finding.cost() * 10);
            if (tenths > 0) {
                sums.merge(finding.rule(), tenths, Long::sum);
                levels.merge(finding.level().id(), finding.cost(), Double::sum);
            }
        }
        Totals totals = java.util.Objects.requireNonNull(plan.totals());
        assertThat(Math.round(10 * (totals.must() + totals.key() + totals.main() + totals.want())))
                .as("the findings sum to the totals")
                .isEqualTo(sums.values().stream().mapToLong(Long::longValue).sum());
        return sums;
    }
}
