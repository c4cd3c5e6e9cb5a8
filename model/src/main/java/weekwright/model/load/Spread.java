package weekwright.model.load;

import java.util.OptionalDouble;
import weekwright.model.Ids;

/**
 * A week of daily loads: Foster 1998, MSSE 30:1164-1168. A day without a session counts 0. The papers do not say which
 * standard deviation is meant: ours is that of a sample (divisor n − 1), as a spreadsheet has it; it is named wherever it
 * is shown. For 7 days the other one is smaller by the factor √(6/7).
 */
public final class Spread {
    /** What a standard deviation is divided by. */
    public enum Divisor {
        SAMPLE("n − 1"),
        POPULATION("n");

        private final String sign;

        Divisor(String sign) {
            this.sign = sign;
        }

        /** The name as written on a command line. */
        public String id() {
            return Ids.of(this);
        }

        /** As it is shown. */
        public String sign() {
            return sign;
        }
    }

    /** The divisor that is used where nobody asks for another. Expert proposal. */
    public static final Divisor USUAL = Divisor.SAMPLE;

    private static final double EVEN = 1e-9;

    private final double[] days;

    private Spread(double[] days) {
        this.days = days.clone();
    }

    /** The spread of daily loads in AU, one for each day. */
    public static Spread of(double... days) {
        if (days.length < 2) {
            throw new IllegalArgumentException("a spread is that of two days or more");
        }
        return new Spread(days);
    }

    /** Load of all days, AU. */
    public double total() {
        double sum = 0;
        for (double day : days) {
            sum += day;
        }
        return sum;
    }

    /** Mean daily load, AU. */
    public double mean() {
        return total() / days.length;
    }

    /** Standard deviation of the daily loads, AU. */
    public double deviation(Divisor divisor) {
        double mean = mean();
        double squares = 0;
        for (double day : days) {
            squares += (day - mean) * (day - mean);
        }
        return Math.sqrt(squares / (divisor == Divisor.SAMPLE ? days.length - 1 : days.length));
    }

    /** Mean over deviation; empty, never endless, where all days are alike. */
    public OptionalDouble monotony(Divisor divisor) {
        double deviation = deviation(divisor);
        return deviation <= EVEN * Math.max(1, mean()) ? OptionalDouble.empty() : OptionalDouble.of(mean() / deviation);
    }

    /** Load of all days times monotony; empty where monotony is. */
    public OptionalDouble strain(Divisor divisor) {
        OptionalDouble monotony = monotony(divisor);
        return monotony.isEmpty() ? monotony : OptionalDouble.of(total() * monotony.getAsDouble());
    }
}
