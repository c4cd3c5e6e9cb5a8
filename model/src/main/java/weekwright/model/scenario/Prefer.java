package weekwright.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/** Where and when a coach would rather have an aim's sessions; null times mean any. */
public record Prefer(
        List<String> facilities,
        @Nullable ClockTime from,
        @Nullable ClockTime to) {
    public Prefer {
        facilities = Ids.listed(facilities);
    }
}
