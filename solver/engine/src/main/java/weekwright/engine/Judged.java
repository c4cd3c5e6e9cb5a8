package weekwright.engine;

import java.util.List;
import weekwright.model.plan.Plan;

/**
 * A plan that was judged.
 *
 * @param plan the plan with its totals, findings and what is left out
 * @param kept ids of the rules judged and not broken (no cost, nothing told), in rulebook order
 * @param days what each day asks, per group and day
 */
public record Judged(Plan plan, List<String> kept, List<DayPicture> days) {
    public Judged {
        kept = List.copyOf(kept);
        days = List.copyOf(days);
    }
}
