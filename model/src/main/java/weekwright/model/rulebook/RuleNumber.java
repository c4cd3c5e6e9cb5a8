package weekwright.model.rulebook;

import org.jspecify.annotations.Nullable;

/**
 * A number of a rule that a scenario may change.
 *
 * @param name name in documents
 * @param meaning what it is, in a few words
 * @param unit unit, e.g. {@code h}, {@code points}
 * @param least lowest value accepted
 * @param most highest value accepted
 * @param usual value unless changed, or null where the families' own figures hold until changed
 * @param keyed null for one number; {@code pathway} where it is given by pathway
 * @param source published source, or {@code expert proposal} or {@code common practice, no source}
 */
public record RuleNumber(
        String name,
        String meaning,
        String unit,
        double least,
        double most,
        @Nullable Double usual,
        @Nullable String keyed,
        String source) {}
