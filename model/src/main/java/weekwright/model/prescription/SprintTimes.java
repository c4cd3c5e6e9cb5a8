package weekwright.model.prescription;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Times of runs as shares of a best: time = best / share. Exact only where best and run have distance, start, timing and
 * footwear in common. Seconds.
 */
public final class SprintTimes {
    /** Added to a hand time over 100 or 200 m (track convention, seen in secondary pages). */
    public static final double HAND_SHORT = 0.24;
    /** Added to a hand time over 400 m and more (track scoring convention, from memory). */
    public static final double HAND_LONG = 0.14;
    /** Added to a hand time over 40 yards (Meinke et al. 2009, student research abstract). */
    public static final double HAND_FORTY_YARDS = 0.225;
    /** Runs in a row that must fall off before the work ends (rule of thumb: common practice, no source). */
    public static final int STOP_RUNS = 2;

    private static final double FORTY_YARDS = 36.576;
    private static final double HUNDREDTHS = 100;
    private static final double EXACT = 1e-9;

    private SprintTimes() {}

    /** The slowest time that still is this share of the best, rounded down to 0.01 s: no run too slow is let in. */
    public static double slowest(double best, double share) {
        return Math.floor(best / share * HUNDREDTHS + EXACT) / HUNDREDTHS;
    }

    /** The fastest time that is no more than this share of the best, rounded up to 0.01 s: no run too fast is asked. */
    public static double fastest(double best, double share) {
        return Math.ceil(best / share * HUNDREDTHS - EXACT) / HUNDREDTHS;
    }

    /**
     * What an automatic clock would have shown for a hand time, where a correction is published for the distance. Never
     * for a flying run, whose start and end are taken alike.
     */
    public static OptionalDouble electronic(double metres, double handSeconds, boolean flying) {
        if (flying) {
            return OptionalDouble.empty();
        }
        if (Math.abs(metres - FORTY_YARDS) < 0.05) {
            return OptionalDouble.of(handSeconds + HAND_FORTY_YARDS);
        }
        if (metres == 100 || metres == 200) {
            return OptionalDouble.of(handSeconds + HAND_SHORT);
        }
        return metres >= 400 ? OptionalDouble.of(handSeconds + HAND_LONG) : OptionalDouble.empty();
    }

    /**
     * Whether the work ends after these runs: the last two were each slower than the best of the day allows. One bad run
     * is noise: the same 40 m differ by 0.7 to 1.0 % from day to day (Haugen et al. 2012, JSCR 26:473-479).
     *
     * @param percent loss of speed allowed; 3 in maximal velocity, 5 in acceleration (expert proposal; 3 was used, not
     *     shown to be best, by Jimenez-Reyes et al. 2019, J Sports Sci 37:1029-1037)
     */
    public static boolean stops(List<Double> seconds, double percent) {
        if (seconds.size() <= STOP_RUNS) {
            return false;
        }
        double best = seconds.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double limit = best / (1 - percent / 100);
        return seconds.subList(seconds.size() - STOP_RUNS, seconds.size()).stream()
                .allMatch(time -> time > limit + EXACT);
    }

    /** Seconds of rest after a run near full speed: 1 min for each 10 m, run-in included (common practice, no source). */
    public static int restSeconds(double metres) {
        return (int) (Math.ceil(Math.max(60, 6 * metres) / 30) * 30);
    }
}
