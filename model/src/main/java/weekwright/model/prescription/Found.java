package weekwright.model.prescription;

import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Mark;

/**
 * What an athlete's marks say of one thing.
 *
 * @param value the best: seconds, metres a second or kilograms; null where there is none to go by
 * @param mark the mark behind it, or null
 * @param age how old it is
 * @param estimated whether it was worked out from something else than the thing itself
 * @param unsure whether a set of many repetitions makes it less certain
 */
public record Found(@Nullable Double value, @Nullable Mark mark, Age age, boolean estimated, boolean unsure) {
    /** No mark to go by. */
    public static final Found NOTHING = new Found(null, null, Age.NONE, false, false);

    /** How old a mark is. */
    public enum Age {
        NONE,
        FRESH,
        /** Told beside the number. */
        OLD,
        /** No number is made of it. */
        TOO_OLD
    }

    static Found tooOld(Mark mark) {
        return new Found(null, mark, Age.TOO_OLD, false, false);
    }
}
