package weekwright.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/** Measured runs or lifts of one athlete in one session. */
public record Result(
        Measure measure,
        @Nullable Double metres,
        List<Double> seconds,
        @Nullable String lift,
        @Nullable Double kg,
        @Nullable Integer repetitions) {
    public Result {
        seconds = Ids.listed(seconds);
    }
}
