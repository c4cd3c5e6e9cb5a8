package weekwright.model.plan;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;
import weekwright.model.rulebook.RuleLevel;

/**
 * One breach of a rule, or one fact told.
 *
 * @param rule id of the rule
 * @param cost what it adds to the total of its level, in whole tenths
 * @param heads people concerned
 * @param placements ids of the placements concerned, in order of start
 * @param history starts of the history entries concerned, {@code group/family/start}
 * @param week first date of the plan week, where one is concerned
 * @param measured what was measured, in {@code unit}
 * @param limit what it was measured against, in {@code unit}
 * @param text the finding in a coach's words
 * @param remedy the cheapest single change that clears it, or null
 * @param noRemedy why there is no remedy, or null
 */
public record Finding(
        String rule,
        String title,
        RuleLevel level,
        double cost,
        int heads,
        List<String> groups,
        List<String> athletes,
        List<String> placements,
        List<String> fixtures,
        List<String> commitments,
        List<String> history,
        @Nullable String facility,
        @Nullable String staff,
        @Nullable LocalDate week,
        @Nullable LocalDate day,
        double measured,
        double limit,
        String unit,
        String text,
        @Nullable Remedy remedy,
        @Nullable String noRemedy) {
    public Finding {
        groups = Ids.listed(groups);
        athletes = Ids.listed(athletes);
        placements = Ids.listed(placements);
        fixtures = Ids.listed(fixtures);
        commitments = Ids.listed(commitments);
        history = Ids.listed(history);
    }
}
