package weekwright.model.load;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How the last days compare with the weeks before, in three conventions that disagree on the same data. It describes; it
 * does not predict injury.
 */
public enum LoadRatio {
    /** Mean of 7 days over mean of the last 28, those 7 among them (e.g. Gabbett 2016, BJSM 50:273-280). */
    COUPLED("mean of 7 days ÷ mean of 28 days, those 7 among them") {
        @Override
        double of(double[] days) {
            return coupled(SHORT, LONG, days).orElse(Double.NaN);
        }
    },
    /** Mean of 7 days over mean of the 21 before them (Windt and Gabbett, BJSM 53:988). */
    UNCOUPLED("mean of 7 days ÷ mean of the 21 days before") {
        @Override
        double of(double[] days) {
            return mean(days, SHORT, 0) / mean(days, LONG - SHORT, SHORT);
        }
    },
    /** Exponentially weighted, λ = 2/(N + 1), seeded with the first day (Williams et al. 2017, BJSM 51:209-210). */
    WEIGHTED("exponentially weighted, 7 ÷ 28 days, λ = 2/(N + 1), begun with the first day's load") {
        @Override
        double of(double[] days) {
            return weighted(days, SHORT) / weighted(days, LONG);
        }
    };

    /** Days of the short mean. */
    public static final int SHORT = 7;
    /** Days of the long mean; before so many are known nothing is shown. */
    public static final int LONG = 28;
    /** What stands beside every ratio. */
    public static final String CAVEAT = "Describes how this week compares with recent weeks; does not predict injury.";

    /** What is held against it, to be shown beside it. */
    public static final List<String> CRITIQUES = List.of(
            "The short span lies inside the long one, which ties them together (Lolli et al. 2019, BJSM 53:921-922).",
            "No causal or conceptual basis; go back to ordinary progression (Impellizzeri et al. 2020, J Athl Train"
                    + " 55:893-901).",
            "Dividing by fixed or random long loads did about as well (Impellizzeri et al. 2021, Sports Med"
                    + " 51:581-592).");

    private final String meaning;

    LoadRatio(String meaning) {
        this.meaning = meaning;
    }

    /** How it is worked out, in words. */
    public String meaning() {
        return meaning;
    }

    abstract double of(double[] days);

    /**
     * The ratio on the last of these days.
     *
     * @param days daily loads from the first known day on, a day without a session 0
     * @return empty before 28 days are known, and where the long load is 0
     */
    public OptionalDouble on(double... days) {
        if (days.length < LONG) {
            return OptionalDouble.empty();
        }
        double ratio = of(days);
        return Double.isFinite(ratio) ? OptionalDouble.of(ratio) : OptionalDouble.empty();
    }

    /**
     * Mean of the last days over the mean of more of them, the same among them.
     *
     * @return empty where fewer days are given, and where the long mean is 0
     */
    public static OptionalDouble coupled(int shortDays, int longDays, double... days) {
        if (days.length < longDays || mean(days, longDays, 0) <= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(mean(days, shortDays, 0) / mean(days, longDays, 0));
    }

    /** Mean of some days, counted back from the end. */
    static double mean(double[] days, int count, int before) {
        int end = days.length - before;
        return Arrays.stream(days, end - count, end).sum() / count;
    }

    /** Exponentially weighted mean on the last day, begun with the first day's load. */
    public static double weighted(double[] days, int span) {
        double weight = 2.0 / (span + 1);
        double mean = days[0];
        for (int day = 1; day < days.length; day++) {
            mean = days[day] * weight + (1 - weight) * mean;
        }
        return mean;
    }
}
