package weekwright.model.prescription;

import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The mono-exponential model of a sprint from a standstill: speed v(t) = top (1 − e^(−t/τ)), distance d(t) = top (t − τ +
 * τ e^(−t/τ)) (Furusawa, Hill and Parkinson 1927; in use since, e.g. Samozino et al. 2016, Scand J Med Sci Sports
 * 26:648-658; both from memory). Fitted by least squares on the distances.
 *
 * @param topSpeed m/s
 * @param timeConstant τ, s
 * @param splits number of splits behind it; two are met exactly, so that nothing is known of the fit
 * @param largestMiss largest difference between a split's time and the model's, s
 */
public record SprintProfile(double topSpeed, double timeConstant, int splits, double largestMiss) {
    /** Fastest running speed that is believed, m/s; the fastest ever measured is 12.3 to 12.4 (from memory). */
    public static final double FASTEST = 12.5;
    /** Slowest top speed that is believed of an athlete, m/s. Expert proposal. */
    public static final double SLOWEST = 4;
    /** Largest time by which a split may differ from the model, s. Expert proposal. */
    public static final double MOST_MISS = 0.05;
    /** How many time constants the longest split must last: then 86 % of top speed is reached. Expert proposal. */
    public static final double LEAST_CONSTANTS = 2;

    private static final double LEAST_CONSTANT = 0.4;
    private static final double MOST_CONSTANT = 2.5;
    private static final int MOST_STEPS = 500;

    /** A time at a distance, of one run or of runs of one day with the same start and timing. */
    public record Split(double metres, double seconds) {}

    /**
     * The profile of splits.
     *
     * @throws IllegalArgumentException where the splits cannot carry one; the message says why
     */
    public static SprintProfile of(List<Split> given) {
        List<Split> splits = given.stream()
                .sorted(java.util.Comparator.comparingDouble(Split::metres))
                .toList();
        check(splits);
        double[] fitted = fit(splits);
        double top = fitted[0];
        double constant = fitted[1];
        double last = splits.get(splits.size() - 1).seconds();
        if (!(top >= SLOWEST && top <= FASTEST && constant >= LEAST_CONSTANT && constant <= MOST_CONSTANT)) {
            throw new IllegalArgumentException(
                    "these splits fit no sprint from a standstill: check distances, start and timing");
        }
        if (last < LEAST_CONSTANTS * constant) {
            throw new IllegalArgumentException(
                    "the longest split ends before top speed is near: time a longer run as well");
        }
        SprintProfile bare = new SprintProfile(top, constant, splits.size(), 0);
        double miss = splits.stream()
                .mapToDouble(split -> Math.abs(bare.seconds(split.metres()) - split.seconds()))
                .max()
                .orElseThrow();
        if (miss > MOST_MISS) {
            throw new IllegalArgumentException("a split lies " + Math.round(miss * 100) / 100.0
                    + " s from the curve of the others: measure it again");
        }
        return new SprintProfile(top, constant, splits.size(), miss);
    }

    private static void check(List<Split> splits) {
        if (splits.size() < 2) {
            throw new IllegalArgumentException("a profile needs two splits or more of one start and timing");
        }
        for (int i = 1; i < splits.size(); i++) {
            Split before = splits.get(i - 1);
            Split split = splits.get(i);
            double speed = (split.metres() - before.metres()) / (split.seconds() - before.seconds());
            if (!(split.seconds() > before.seconds() && split.metres() > before.metres()) || speed > FASTEST) {
                throw new IllegalArgumentException("between " + weekwright.model.Plain.number(before.metres()) + " and "
                        + weekwright.model.Plain.number(split.metres())
                        + " m the times cannot be: check the two splits");
            }
        }
    }

    private static double[] fit(List<Split> splits) {
        double[] metres = splits.stream().mapToDouble(Split::metres).toArray();
        Split last = splits.get(splits.size() - 1);
        try {
            Optimum optimum = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(new double[] {1.2 * last.metres() / last.seconds(), 1})
                            .model(point -> model(splits, point.getEntry(0), point.getEntry(1)))
                            .target(metres)
                            .lazyEvaluation(false)
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build());
            return optimum.getPoint().toArray();
        } catch (MathIllegalStateException e) {
            throw new IllegalArgumentException("these splits fit no sprint from a standstill: measure them again", e);
        }
    }

    private static Pair<org.apache.commons.math3.linear.RealVector, org.apache.commons.math3.linear.RealMatrix> model(
            List<Split> splits, double top, double constant) {
        double[] distances = new double[splits.size()];
        double[][] slopes = new double[splits.size()][2];
        for (int i = 0; i < distances.length; i++) {
            double t = splits.get(i).seconds();
            double decay = Math.exp(-t / constant);
            double reach = t - constant + constant * decay;
            distances[i] = top * reach;
            slopes[i][0] = reach;
            slopes[i][1] = top * (decay * (1 + t / constant) - 1);
        }
        return new Pair<>(new ArrayRealVector(distances), new Array2DRowRealMatrix(slopes));
    }

    /** Metres covered after so many seconds. */
    public double metres(double seconds) {
        return topSpeed * (seconds - timeConstant + timeConstant * Math.exp(-seconds / timeConstant));
    }

    /** Seconds for so many metres; meant for 10 to 60, where the model is made for. */
    public double seconds(double metres) {
        double low = 0;
        double high = metres / topSpeed + timeConstant;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (metres(middle) < metres) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Whether more splits than unknowns lie behind it, so that the largest miss says something. */
    public boolean tested() {
        return splits > 2;
    }
}
