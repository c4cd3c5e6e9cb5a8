package weekwright.model.prescription;

import com.fasterxml.jackson.annotation.JsonValue;
import weekwright.model.Ids;

/**
 * Formulas that estimate a one-repetition maximum from a set to failure with good form. One repetition is the maximum
 * itself, whatever the formula gives for it. Formulas as two public listings have them; origins from memory.
 */
public enum RepMax {
    /** Epley 1985, Boyd Epley Workout: the most widely used, so the default; not known to be the best. */
    EPLEY {
        @Override
        double factor(int repetitions) {
            return 1 + repetitions / 30.0;
        }
    },
    /** Brzycki 1993, JOPERD 64(1):88-90. */
    BRZYCKI {
        @Override
        double factor(int repetitions) {
            return 36.0 / (37 - repetitions);
        }
    },
    /** Lombardi 1989. */
    LOMBARDI {
        @Override
        double factor(int repetitions) {
            return Math.pow(repetitions, 0.10);
        }
    },
    /** Mayhew et al. 1992, J Appl Sport Sci Res 6:200-206. */
    MAYHEW {
        @Override
        double factor(int repetitions) {
            return 100 / (52.2 + 41.9 * Math.exp(-0.055 * repetitions));
        }
    },
    /** O'Conner, Simmons and O'Shea 1989. */
    OCONNER {
        @Override
        double factor(int repetitions) {
            return 1 + 0.025 * repetitions;
        }
    },
    /** Wathan 1994. */
    WATHAN {
        @Override
        double factor(int repetitions) {
            return 100 / (48.8 + 53.8 * Math.exp(-0.075 * repetitions));
        }
    };

    /** Most repetitions from which a maximum is estimated (Reynolds, Gordon and Robergs 2006, JSCR 20:584-592). */
    public static final int MOST_REPETITIONS = 10;
    /** Repetitions from which an estimate is told to be less certain. Expert proposal. */
    public static final int UNSURE_FROM = 7;

    /** Shares of the maximum in per cent for 1 to 10 repetitions (NSCA load chart, seen in a copy). */
    private static final int[] CHART = {100, 95, 93, 90, 87, 85, 83, 80, 77, 75};

    /** The name as written in documents. */
    @JsonValue
    public String id() {
        return Ids.of(this);
    }

    abstract double factor(int repetitions);

    /**
     * The estimated maximum, in the unit of the weight.
     *
     * @throws IllegalArgumentException outside 1 to 10 repetitions
     */
    public double maximum(double weight, int repetitions) {
        return weight / share(repetitions);
    }

    /**
     * The share of the maximum that can be lifted so many times, 0 to 1.
     *
     * @throws IllegalArgumentException outside 1 to 10 repetitions
     */
    public double share(int repetitions) {
        if (repetitions < 1 || repetitions > MOST_REPETITIONS) {
            throw new IllegalArgumentException("a maximum is estimated from 1 to " + MOST_REPETITIONS
                    + " repetitions, not from " + repetitions + ": test with a heavier weight");
        }
        return repetitions == 1 ? 1 : 1 / factor(repetitions);
    }

    /**
     * Share of the maximum in per cent that the NSCA load chart gives for 1 to 10 repetitions. It and the textbook differ
     * at 12, so nothing is given beyond 10.
     */
    public static int chartPercent(int repetitions) {
        if (repetitions < 1 || repetitions > CHART.length) {
            throw new IllegalArgumentException("the chart is read for 1 to 10 repetitions, not for " + repetitions);
        }
        return CHART[repetitions - 1];
    }
}
