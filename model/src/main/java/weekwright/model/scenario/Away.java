package weekwright.model.scenario;

import org.jspecify.annotations.Nullable;

/** A span of time in which a group or an athlete is away, or a facility is closed; half open. */
public record Away(Moment from, Moment to, @Nullable String why) {}
