package weekwright.engine.recalculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
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
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;
import weekwright.scenarios.Demo;
import weekwright.scenarios.RandomPlans;
import weekwright.scenarios.Scenarios;
import weekwright.scenarios.SquadGenerator;

/** The judge and a slow calculation that was written from the rules alone must say the same of any plan. */
class SecondCalculationTest {
    /** Plans of a small scenario; {@code -Dweekwright.plans=1000} tries more. Large ones get fewer still. */
    private static final int PLANS = Integer.getInteger("weekwright.plans", 200);

    /** Days of people that are gone through for each plan wished, about. */
    private static final int DAYS_OF_PEOPLE = 60;

    private static final int CLUBS = 10;

    /** So often at least each rule must be broken and kept, or the comparison says little of it; less of few plans. */
    private static final int OFTEN = Math.min(5, PLANS * 5 / 200);

    static Stream<Scenario> scenarios() {
        Stream<Scenario> demos = Scenarios.all().stream().map(Demo::name).map(Scenarios::read);
        Stream<Scenario> tiny = Stream.of(1L, 2L, 3L).map(SquadGenerator::tiny);
        return Stream.of(demos, tiny, clubs()).flatMap(some -> some);
    }

    private static Stream<Scenario> clubs() {
        return LongStream.rangeClosed(1, CLUBS).mapToObj(SquadGenerator::club);
    }

    private static int plans(Scenario scenario) {
        int people = Roster.of(scenario).people().size();
        return Math.max(2, Math.min(PLANS, PLANS * DAYS_OF_PEOPLE / (people * scenario.days())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenarios")
    void judge_and_second_calculation_agree_on_random_plans(Scenario scenario) {
        for (int seed = 1; seed <= plans(scenario); seed++) {
            Plan plan = RandomPlans.randomPlan(scenario, new Random(seed));
            Map<String, Long> expected = recalculated(scenario, plan);
            assertThat(judged(scenario, plan))
                    .as("%s, plan of seed %d", scenario.id(), seed)
                    .isEqualTo(expected);
            count(expected);
        }
    }

    /** Facts about what is fixed cost nothing at any level, and staying close is judged beside an older plan. */
    private static final Set<String> NEVER_IN_ONE_PLAN =
            Set.of("pins", "keep-plan", "fixtures-close", "rest-between-fixtures", "softened");

    private static final Map<String, Integer> BROKEN = new TreeMap<>();
    private static final Map<String, Integer> KEPT = new TreeMap<>();

    private static void count(Map<String, Long> costs) {
        judgedRules().forEach(rule -> (costs.containsKey(rule) ? BROKEN : KEPT).merge(rule, 1, Integer::sum));
    }

    @AfterAll
    static void every_judged_rule_is_broken_and_kept_in_the_comparison() {
        assertThat(judgedRules().filter(rule -> !NEVER_IN_ONE_PLAN.contains(rule)))
                .allSatisfy(rule -> {
                    assertThat(BROKEN.getOrDefault(rule, 0))
                            .as("%s broken", rule)
                            .isGreaterThanOrEqualTo(OFTEN);
                    assertThat(KEPT.getOrDefault(rule, 0)).as("%s kept", rule).isGreaterThanOrEqualTo(OFTEN);
                });
    }

    private static Stream<String> judgedRules() {
        return Rulebook.builtIn().rules().stream().filter(Rule::judged).map(Rule::id);
    }

    private static Map<String, Long> recalculated(Scenario scenario, Plan plan) {
        Map<String, Long> costs = new TreeMap<>();
        Recalculation.of(scenario, Catalogue.builtIn(), Rulebook.builtIn(), plan)
                .rules()
                .forEach((rule, sum) -> costs.put(rule, sum.cost()));
        costs.keySet().retainAll(judgedRules().toList());
        return costs;
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
