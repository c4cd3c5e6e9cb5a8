package weekwright.model.prescription;

/** Running by maximal aerobic speed: distance of a run = speed × share × seconds (Baker, UKSCA; secondary pages). */
public final class AerobicSpeed {
    /** Fastest aerobic speed that is believed, m/s; the best over 3000 m run 6.9 (from memory). */
    public static final double FASTEST = 7;

    private static final double SHORTEST_TEST = 1_200;
    private static final double LONGEST_TEST = 1_800;
    private static final double SHORTEST_SECONDS = 300;
    private static final double LONGEST_SECONDS = 360;

    private AerobicSpeed() {}

    /** Metres of a run. */
    public static double metres(double metresPerSecond, double share, double seconds) {
        return metresPerSecond * share * seconds;
    }

    /** Whether a run is a test of aerobic speed: 1200 to 1800 m, or 5 to 6 min. */
    public static boolean isTest(double metres, double seconds) {
        return (metres >= SHORTEST_TEST && metres <= LONGEST_TEST)
                || (seconds >= SHORTEST_SECONDS && seconds <= LONGEST_SECONDS);
    }

    /**
     * Aerobic speed of a test run, m/s.
     *
     * @throws IllegalArgumentException where the run is no such test
     */
    public static double ofTest(double metres, double seconds) {
        if (!isTest(metres, seconds)) {
            throw new IllegalArgumentException("a test of aerobic speed is a run of 1200 to 1800 m or of 5 to 6 min");
        }
        return metres / seconds;
    }
}
