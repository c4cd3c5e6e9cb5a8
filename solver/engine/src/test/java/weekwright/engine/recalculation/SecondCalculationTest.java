package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.engine.problem.Cost;
import weekwright.engine.problem.Problem;
import weekwright.engine.problem.ProblemBuilder;
import weekwright.engine.problem.ProblemBuilder.PlanUse;
import weekwright.engine.problem.Session;
import weekwright.engine.problem.Stimulus;
import weekwright.engine.rules.Price;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** The judge and a slow calculation that was written from the rules alone must say the same of any plan. */
class SecondCalculationTest {
    /** Plans of each scenario; {@code -Dweekwright.plans=100} tries fewer. */
    private static final int PLANS = Integer.getInteger("weekwright.plans", 1000);

    static Stream<Scenario> scenarios() {
        Stream<Scenario> demos = Scenarios.all().stream().map(Demo::name).map(Scenarios::read);
        return Stream.concat(demos, Stream.of(1L, 2L, 3L).map(SquadGenerator::tiny));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void judge_and_second_calculation_agree_on_random_plans(Scenario scenario) {
        for (int seed = 1; seed <= PLANS; seed++) {
            Plan plan = RandomPlans.randomPlan(scenario, new Random(seed));
            Map<String, Long> recalculated = new TreeMap<>();
            Recalculation.of(scenario, Catalogue.builtIn(), Rulebook.builtIn(), plan)
                    .rules()
                    .forEach((rule, sum) -> recalculated.put(rule, sum.cost()));
            assertThat(judged(scenario, plan))
                    .as("%s, plan of seed %d", scenario.id(), seed)
                    .isEqualTo(recalculated);
        }
    }

    /** What each rule adds, by the findings; they must sum to the totals. */
    private static Map<String, Long> judged(Scenario scenario, Plan plan) {
        Problem problem = ProblemBuilder.of(scenario, plan, PlanUse.CHECK);
        Stimulus[] at = new Stimulus[problem.sessions.size()];
        for (Session session : problem.sessions) {
            at[session.index] = session.before;
        }
        weekwright.engine.rules.Judge judge = weekwright.engine.rules.Judge.of(problem, at);
        Map<String, Long> sums = new TreeMap<>();
        judge.explain((rule, view, breach, heads) -> {
            long tenths = Price.tenths(rule, breach, heads);
            if (!breach.isTold() && rule.level() != RuleLevel.TOLD && tenths > 0) {
                sums.merge(rule.id(), tenths, Long::sum);
            }
        });
        Cost total = judge.total();
        assertThat(sums.values().stream().mapToLong(Long::longValue).sum())
                .as("the findings sum to the totals")
                .isEqualTo(total.must + total.key + total.main + total.want);
        return sums;
    }
}
