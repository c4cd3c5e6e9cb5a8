package weekwright.model.prescription;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one line asks of one athlete.
 *
 * @param kind what the numbers are
 * @param from the lower number: fastest time, lightest weight, shortest distance; null for no lower edge
 * @param to the upper number: slowest time, heaviest weight, longest distance; null where words stand instead
 * @param words what to go by where there is no number, or null
 * @param basis the mark behind the number, or null
 * @param flags what to know of the number: old, by hand, estimated
 */
public record Target(
        Kind kind,
        @Nullable Double from,
        @Nullable Double to,
        @Nullable String words,
        @Nullable String basis,
        List<String> flags) {
    /** What the numbers are. */
    public enum Kind {
        SECONDS,
        WEIGHT,
        METRES,
        WORDS
    }

    static Target words(String words, List<String> flags) {
        return new Target(Kind.WORDS, null, null, words, null, flags);
    }
}
