package weekwright.model.scenario;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A measured best of an athlete: a sprint (metres, seconds, start, timing), a lift (lift, kg, repetitions) or an aerobic
 * speed (metres a second). Fields that a measure does not use are null.
 */
public record Mark(
        Measure measure,
        @Nullable Double metres,
        @Nullable Double seconds,
        @Nullable SprintStart start,
        @Nullable Timing timing,
        @Nullable String lift,
        @Nullable Double kg,
        @Nullable Integer repetitions,
        @Nullable Double metresPerSecond,
        LocalDate date) {}
