package weekwright.engine.search;

/** Hears of a search and tells it when to stop. Called from the searching threads. */
interface Watch {
    /** Hears nothing and never stops. */
    Watch NONE = new Watch() {
        @Override
        public void better(Incumbent best) {}

        @Override
        public boolean tried(long moves) {
            return false;
        }

        @Override
        public double secondsLeft() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public Watch forShare(double share) {
            return this;
        }
    };

    /** A better plan was found by one of the searches. */
    void better(Incumbent best);

    /** Moves tried since the last call; whether to stop now. */
    boolean tried(long moves);

    /** Seconds until it says stop, without end where it looks at no clock. */
    double secondsLeft();

    /** The same watch, stopping when a share of its time is spent. */
    Watch forShare(double share);
}
