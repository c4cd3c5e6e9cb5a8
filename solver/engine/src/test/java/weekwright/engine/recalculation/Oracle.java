package weekwright.engine.recalculation;

import java.util.Map;
import java.util.TreeMap;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.plan.Plan;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Scenario;

/** The second calculation, for tests of whole searches. */
public final class Oracle {
    private Oracle() {}

    /** What each rule that is judged adds to the totals, in tenths, in alphabetical order; nothing where it adds nothing. */
    public static Map<String, Long> costs(Scenario scenario, Plan plan) {
        Map<String, Long> costs = new TreeMap<>();
        Recalculation.of(scenario, Catalogue.builtIn(), Rulebook.builtIn(), plan)
                .rules()
                .forEach((rule, sum) -> costs.put(rule, sum.cost()));
        costs.keySet()
                .retainAll(Rulebook.builtIn().rules().stream()
                        .filter(Rule::judged)
                        .map(Rule::id)
                        .toList());
        return costs;
    }
}
