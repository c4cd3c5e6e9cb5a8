package weekwright.model.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.plan.Totals;

/**
 * Two plans side by side.
 *
 * @param before how the first stands
 * @param changed how the first stands in the second's scenario, or null where the scenario is the same
 * @param after how the second stands
 * @param broke what the change of the scenario broke by itself, in words
 * @param sessions sessions that differ, in order of time
 * @param better rules that are kept better in the second plan than in the first as it stood
 * @param worse rules that are kept worse in it
 * @param text the comparison in a sentence
 */
public record Comparison(
        Totals before,
        @Nullable Totals changed,
        Totals after,
        List<String> broke,
        List<Change> sessions,
        List<Shift> better,
        List<Shift> worse,
        String text) {
    public Comparison {
        broke = Ids.listed(broke);
        sessions = Ids.listed(sessions);
        better = Ids.listed(better);
        worse = Ids.listed(worse);
    }
}
