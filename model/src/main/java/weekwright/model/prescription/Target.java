package weekwright.model.prescription;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * What one line asks of one athlete.
 *
 * @param kind what the numbers are
 * @param from the lower number: fastest time, lightest weight, shortest distance; null for no lower edge
 * @param to the upper number: slowest time, heaviest weight, longest distance; null where words stand instead
 * @param limit slowest time that still counts as fast work, or null where nothing is fast work
 * @param words what to go by where there is no number, or null
 * @param basis the mark behind the number, or null
 * @param flags what to know of the number: old, by hand, estimated
 */
public record Target(
        Kind kind,
        @Nullable Double from,
        @Nullable Double to,
        @Nullable Double limit,
        @Nullable String words,
        @Nullable String basis,
        List<String> flags) {
    /** The flag of what has no mark to go by. */
    public static final String NO_MARK = "no mark";

    /** Of a line that is the same for everybody. */
    public static final Target NONE = new Target(Kind.NONE, null, null, null, null, null, List.of());

    public Target {
        flags = List.copyOf(flags);
    }

    /** What the numbers are. */
    public enum Kind {
        /** The line is the same for everybody. */
        NONE,
        /** Seconds of a run. */
        SECONDS,
        /** What is on the bar, in the unit of weight. */
        WEIGHT,
        /** Length of a run, in the unit of length. */
        LENGTH,
        WORDS;

        /** The name as written in documents. */
        @JsonValue
        public String id() {
            return Ids.of(this);
        }
    }

    static Target words(String words, List<String> flags) {
        return new Target(Kind.WORDS, null, null, null, words, null, flags);
    }

    static Target weight(double from, double to, @Nullable String basis, List<String> flags) {
        return new Target(Kind.WEIGHT, from, to, null, null, basis, flags);
    }

    /** The same without a word on where it comes from. */
    public Target bare() {
        return new Target(kind, from, to, limit, words, null, List.of());
    }
}
