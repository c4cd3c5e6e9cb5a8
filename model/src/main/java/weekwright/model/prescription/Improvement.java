package weekwright.model.prescription;

import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Mark;

/**
 * A mark that a log betters.
 *
 * @param mark what was done
 * @param before the best of the kind so far, or null where there is none to go by
 * @param value seconds of a sprint, maximum of a lift in kilograms
 * @param valueBefore the same of the mark before, or null
 */
public record Improvement(
        Athlete athlete,
        Mark mark,
        @Nullable Mark before,
        double value,
        @Nullable Double valueBefore) {}
