package weekwright.model.catalogue;

import org.jspecify.annotations.Nullable;

/** Elapsed hours: the fewest that are allowed, and those that are wanted (null: none). */
public record Hours(double must, @Nullable Double want) {}
