package weekwright.engine.explain;

import java.util.List;
import weekwright.model.answer.TradeOffs;

/**
 * What cannot all be had and what could go, with the plan that was found for each thing given up.
 *
 * @param without for each thing that could go, in the same order, the documents after it has gone; the plan is not judged yet
 */
public record Traded(TradeOffs answer, List<Remedied> without) {
    public Traded {
        without = List.copyOf(without);
    }
}
