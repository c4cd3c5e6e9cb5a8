package weekwright.model.scenario;

import org.jspecify.annotations.Nullable;

/** How many groups and athletes a facility holds at once; null means no limit. */
public record Room(@Nullable Integer groups, @Nullable Integer athletes) {}
