package weekwright.engine.search;

import weekwright.engine.rules.Judge;

/** Counts a search's moves, keeps the best plan seen, and says when to stop: at its last move, or when nothing is left to gain. */
final class Pace {
    private static final int ASK_EVERY = 512;

    final Incumbent best;
    private final Scale scale;
    private final Watch watch;
    private final long most;
    private final long patience;
    private final double seconds;
    private long moves;
    private long lastBetter;
    private long untold;
    private boolean stopped;

    /**
     * Sets out.
     *
     * @param judge holds the plan at the start
     * @param most moves to try at most
     * @param patience moves without a better plan after which nothing is left to gain
     */
    Pace(Judge judge, Scale scale, Watch watch, long most, long patience) {
        this.scale = scale;
        this.watch = watch;
        this.most = most;
        this.patience = patience;
        seconds = watch.secondsLeft();
        best = new Incumbent(judge, scale);
    }

    /** One that counts the same plans for nobody. */
    Pace deaf(Judge judge) {
        return new Pace(judge, scale, Watch.NONE, Long.MAX_VALUE, Long.MAX_VALUE);
    }

    /** Notes one more plan tried; whether to stop now. */
    boolean tried(Judge judge) {
        if (best.offer(judge)) {
            lastBetter = moves + 1;
            watch.better(best);
        }
        return triedInVain();
    }

    /** Notes one more plan tried that is known to be no better; whether to stop now. */
    boolean triedInVain() {
        moves++;
        if (++untold == ASK_EVERY) {
            tell();
        }
        stopped |= moves >= most || settled();
        return stopped;
    }

    private void tell() {
        stopped |= watch.tried(untold);
        untold = 0;
    }

    /** Tells of the moves not yet told of. */
    void end() {
        tell();
    }

    /** Whether nothing is left to gain. */
    boolean settled() {
        return best.cost().clean() || moves - lastBetter >= patience;
    }

    /** Moves to try at most. */
    long most() {
        return most;
    }

    /** Seconds left by the clock, without end where only moves count. */
    double secondsLeft() {
        return watch.secondsLeft();
    }

    /** Share of the moves or of the seconds that is left, whichever is less: from 1 to 0. */
    double left() {
        double ofMoves = 1 - (double) moves / most;
        double ofSeconds = seconds < Double.POSITIVE_INFINITY ? secondsLeft() / seconds : 1;
        return Math.max(0, Math.min(ofMoves, ofSeconds));
    }

    long moves() {
        return moves;
    }
}
