package weekwright.engine.problem;

/**
 * That a plan is to stay close to the one before.
 *
 * @param published whether that plan was given out, which makes every move dearer
 * @param now epoch minute of the present, for what is about to happen; {@link Integer#MIN_VALUE} where nobody said
 */
public record StayClose(boolean published, int now) {}
