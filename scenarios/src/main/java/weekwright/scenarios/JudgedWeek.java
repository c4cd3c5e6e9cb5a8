package weekwright.scenarios;

import java.util.List;
import weekwright.model.plan.Plan;
import weekwright.model.scenario.Scenario;

/**
 * One of five weeks of the same squad, A to E from good to bad, with a plan written by hand and what it costs, worked
 * out on paper (expert proposal).
 *
 * @param letter A to E
 * @param worked each want that the plan misses, in points
 */
public record JudgedWeek(char letter, Scenario scenario, Plan plan, List<Worked> worked) {
    public JudgedWeek {
        worked = List.copyOf(worked);
    }

    /** What the week costs in all, in tenths of a want point. */
    public int tenths() {
        return worked.stream()
                .mapToInt(item -> (int) Math.round(item.points() * 10))
                .sum();
    }

    /**
     * One want that is missed.
     *
     * @param rule id of the rule
     * @param points want points, in whole tenths
     * @param how the sum on paper
     */
    public record Worked(String rule, double points, String how) {}
}
