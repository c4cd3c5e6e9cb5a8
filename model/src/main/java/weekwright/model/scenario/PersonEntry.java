package weekwright.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.model.Ids;

/**
 * What one athlete reported of a session or fixture.
 *
 * @param rpe own rating, 0 to 10, or null
 * @param minutes own minutes (of a fixture: played), or null
 * @param topSpeedShare highest speed over best speed, or null where not measured
 * @param soreness 0 to 10, shown on the coach's own pages only
 */
public record PersonEntry(
        String athlete,
        @Nullable Double rpe,
        @Nullable Integer minutes,
        List<Result> results,
        @Nullable Double topSpeedShare,
        @Nullable Integer soreness,
        @Nullable String note) {
    public PersonEntry {
        results = Ids.listed(results);
    }
}
