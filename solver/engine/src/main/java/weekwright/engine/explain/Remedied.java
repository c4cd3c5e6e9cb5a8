package weekwright.engine.explain;

import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * The documents after what would help with a finding was done.
 *
 * @param scenario the scenario, changed where somebody gives more time or an aim is dropped
 * @param plan the plan, not judged yet; what was chosen in it is held
 */
public record Remedied(Scenario scenario, Plan plan) {}
