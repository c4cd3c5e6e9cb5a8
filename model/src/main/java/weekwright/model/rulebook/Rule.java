package weekwright.model.rulebook;

import java.util.List;
import java.util.Optional;
import weekwright.model.Ids;

/**
 * One rule as data: all that is said of it anywhere comes from here.
 *
 * @param id name in documents
 * @param title a few words for a heading
 * @param sentence one sentence that a coach could read aloud
 * @param theme package of rules it belongs to, such as {@code recovery}
 * @param level level unless a scenario changes it
 * @param unit unit of the measured value and the limit, e.g. {@code h}
 * @param cost what a breach costs in words
 * @param numbers its numbers, each with unit, range, usual value and source
 * @param source published source with section, or {@code expert proposal} or {@code common practice, no source}
 * @param judged whether this version judges it; the others are listed and not yet judged
 */
public record Rule(
        String id,
        String title,
        String sentence,
        String theme,
        RuleLevel level,
        String unit,
        String cost,
        List<RuleNumber> numbers,
        String source,
        boolean judged) {
    public Rule {
        numbers = Ids.listed(numbers);
    }

    /** The number of this name, if the rule has one. */
    public Optional<RuleNumber> number(String name) {
        return numbers.stream().filter(number -> number.name().equals(name)).findFirst();
    }
}
