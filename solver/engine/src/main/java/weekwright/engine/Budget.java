package weekwright.engine;

/**
 * How long to search: exactly one is positive.
 *
 * @param moves moves to try; the same seed and the same moves give the same plan
 * @param seconds seconds to search, measured by the clock
 */
public record Budget(long moves, double seconds) {
    public Budget {
        if (moves > 0 == seconds > 0) {
            throw new IllegalArgumentException("give either moves or seconds, and more than 0");
        }
    }

    /** A search of so many moves. */
    public static Budget moves(long moves) {
        return new Budget(moves, 0);
    }

    /** A search of so many seconds. */
    public static Budget seconds(double seconds) {
        return new Budget(0, seconds);
    }
}
