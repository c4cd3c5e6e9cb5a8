package weekwright.engine.search;

/**
 * How long to search: a number of moves, which makes the result reproducible, or seconds. Exactly one is positive.
 *
 * @param moves moves to try, or 0
 * @param seconds seconds to spend, or 0
 */
public record Budget(long moves, double seconds) {
    public Budget {
        if ((moves > 0) == (seconds > 0)) {
            throw new IllegalArgumentException("a budget is a number of moves or of seconds, above 0");
        }
    }

    /** So many moves, shared among the searches. */
    public static Budget moves(long moves) {
        return new Budget(moves, 0);
    }

    /** So many seconds of the clock. */
    public static Budget seconds(double seconds) {
        return new Budget(0, seconds);
    }
}
