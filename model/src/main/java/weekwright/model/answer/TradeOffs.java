package weekwright.model.answer;

import java.util.List;
import weekwright.model.Ids;
import weekwright.model.plan.Totals;

/**
 * What cannot all be had, and what could go.
 *
 * @param totals how the plan stands
 * @param clashes small sets of wishes of which one must give way
 * @param couldGo what could be given up, what buys most first
 * @param moves moves of each search behind it
 * @param text the answer in a sentence
 */
public record TradeOffs(Totals totals, List<Clash> clashes, List<GiveUp> couldGo, long moves, String text) {
    public TradeOffs {
        clashes = Ids.listed(clashes);
        couldGo = Ids.listed(couldGo);
    }
}
