package weekwright.engine.explain;

import java.util.List;
import java.util.Objects;
import weekwright.model.plan.Plan;

/**
 * A plan that was judged.
 *
 * @param plan the plan with its totals, findings and what is left out
 * @param kept ids of the rules that were judged and found kept, in the order of the rulebook; facts are not among them
 * @param days each group's days in order
 */
public record Judged(Plan plan, List<String> kept, List<DayPicture> days) {
    public Judged {
        kept = List.copyOf(kept);
        days = List.copyOf(days);
    }

    /** Whether what would help was looked for, wherever that is worth it. */
    public boolean helpSought() {
        return plan.findings().stream()
                .noneMatch(finding -> Objects.equals(finding.noRemedy(), Help.NOT_ASKED.noRemedy()));
    }

    /** The same with another way to write the plan down, of which nothing is judged otherwise. */
    public Judged with(Plan same) {
        return new Judged(same, kept, days);
    }
}
