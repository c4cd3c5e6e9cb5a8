package weekwright.model.plan;

/**
 * A must rule that stands in the way of a session left out.
 *
 * @param options options in which it is broken
 * @param alone options in which no other must rule is
 */
public record Blocker(String rule, int options, int alone) {}
