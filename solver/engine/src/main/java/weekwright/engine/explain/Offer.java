package weekwright.engine.explain;

import weekwright.engine.problem.Asked;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * Something that could be given up, and the documents without it.
 *
 * @param step what to do, without a stop
 */
record Offer(String step, Scenario scenario, Plan plan, Asked asked) {
    static Offer of(String step, Scenario scenario, Plan plan) {
        return new Offer(step, scenario, plan, Asked.ALL);
    }
}
