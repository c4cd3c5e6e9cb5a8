package weekwright.model.plan;

import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.Dose;
import weekwright.model.scenario.Moment;

/** The option of a session left out that would cost least, the rest of the plan staying. */
public record CheapestOption(Moment start, @Nullable String facility, Dose dose, Totals change) {}
