package weekwright.model.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.plan.Totals;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;

/**
 * One time, place and dose of a session, really judged.
 *
 * @param possible whether it breaks nothing that must hold but for what was broken already
 * @param change change of the totals; negative is better
 * @param breaks ids of the rules newly broken
 * @param clears ids of the rules broken at fewer places
 * @param why what must hold and would not, where it is not possible; else null
 */
public record WhyNotOption(
        Moment start,
        @Nullable String facility,
        Dose dose,
        boolean possible,
        Totals change,
        List<String> breaks,
        List<String> clears,
        @Nullable String why) {
    public WhyNotOption {
        breaks = Ids.listed(breaks);
        clears = Ids.listed(clears);
    }
}
