package weekwright.model.prescription;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.model.Plain;
import weekwright.model.scenario.Mark;
import weekwright.model.scenario.SprintStart;

/** Marks of which no number may be made: nobody has done the like, or the formulas do not reach so far. */
final class MarkFaults {
    /** Heaviest lift that is believed, kg; about as much has been lifted once (from memory). */
    static final double HEAVIEST = 500;
    /** Fewest seconds that a start costs over a flying run at the fastest speed. Expert proposal. */
    static final double START_COSTS = 0.5;

    private MarkFaults() {}

    /** What is wrong and what would be right, or null where the mark can be used. */
    static @Nullable String of(Mark mark) {
        return switch (mark.measure()) {
            case SPRINT -> sprint(mark);
            case LIFT -> lift(mark);
            case AEROBIC_SPEED ->
                Objects.requireNonNull(mark.metresPerSecond()) > AerobicSpeed.FASTEST
                        ? "an aerobic speed of " + Plain.number(mark.metresPerSecond())
                                + " m/s is faster than anybody's: not used, check it"
                        : null;
        };
    }

    private static @Nullable String sprint(Mark mark) {
        double metres = Objects.requireNonNull(mark.metres());
        double seconds = Objects.requireNonNull(mark.seconds());
        double start = mark.start() == SprintStart.FLYING ? 0 : START_COSTS;
        return seconds < metres / SprintProfile.FASTEST + start
                ? Plain.number(metres) + " m in " + Plain.number(seconds)
                        + " s is faster than anybody has run: not used, check it"
                : null;
    }

    private static @Nullable String lift(Mark mark) {
        double kg = Objects.requireNonNull(mark.kg());
        int repetitions = Objects.requireNonNull(mark.repetitions());
        String what = mark.lift() + " " + Plain.number(kg) + " kg";
        if (kg > HEAVIEST) {
            return what + " is more than anybody has lifted: not used, check it";
        }
        return repetitions > RepMax.MOST_REPETITIONS
                ? what + " × " + repetitions + ": a maximum is estimated from 10 repetitions at most: not used, test"
                        + " with a heavier weight"
                : null;
    }
}
