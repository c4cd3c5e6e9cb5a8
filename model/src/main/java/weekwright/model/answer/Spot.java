package weekwright.model.answer;

import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;

/** Where a session lies. */
public record Spot(Moment start, @Nullable String facility, Dose dose) {}
