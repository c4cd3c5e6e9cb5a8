package weekwright.engine.recalculation;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Duration;
import java.time.Instant;

/**
 * An exact number in its lowest terms: 8/3 stays 8/3. The lower part is positive. Whatever does not fit is an error,
 * never a wrong figure.
 */
record Fraction(long upper, long lower) implements Comparable<Fraction> {
    static final Fraction ZERO = of(0);
    static final Fraction ONE = of(1);

    Fraction {
        if (lower <= 0) {
            throw new ArithmeticException("the lower part of a fraction is positive, not " + lower);
        }
        long common = gcd(Math.abs(upper), lower);
        upper /= common;
        lower /= common;
    }

    private static long gcd(long one, long other) {
        return one == 0 ? other : gcd(other % one, one);
    }

    static Fraction of(long whole) {
        return new Fraction(whole, 1);
    }

    static Fraction of(long upper, long lower) {
        return new Fraction(upper, lower);
    }

    /** The number as it is written in decimals: 0.95 is 19/20. */
    static Fraction of(double written) {
        BigDecimal decimal = BigDecimal.valueOf(written);
        BigDecimal plain = decimal.scale() < 0 ? decimal.setScale(0) : decimal;
        return new Fraction(
                plain.unscaledValue().longValueExact(),
                BigInteger.TEN.pow(plain.scale()).longValueExact());
    }

    /** Elapsed hours from one instant to another, negative where the second comes first. */
    static Fraction hours(Instant from, Instant to) {
        return of(Duration.between(from, to).toSeconds(), 3600);
    }

    Fraction plus(Fraction other) {
        return new Fraction(
                Math.addExact(Math.multiplyExact(upper, other.lower), Math.multiplyExact(other.upper, lower)),
                Math.multiplyExact(lower, other.lower));
    }

    Fraction minus(Fraction other) {
        return plus(other.times(-1));
    }

    Fraction times(Fraction other) {
        return new Fraction(Math.multiplyExact(upper, other.upper), Math.multiplyExact(lower, other.lower));
    }

    Fraction times(long whole) {
        return times(of(whole));
    }

    Fraction dividedBy(Fraction other) {
        long sign = Long.signum(other.upper);
        return times(new Fraction(sign * other.lower, sign * other.upper));
    }

    Fraction max(Fraction other) {
        return above(other) ? this : other;
    }

    Fraction min(Fraction other) {
        return below(other) ? this : other;
    }

    boolean above(Fraction other) {
        return compareTo(other) > 0;
    }

    boolean below(Fraction other) {
        return compareTo(other) < 0;
    }

    boolean positive() {
        return upper > 0;
    }

    /** The greatest whole number that is not above. */
    long roundedDown() {
        return Math.floorDiv(upper, lower);
    }

    /** The least whole number that is not below. */
    long roundedUp() {
        return -Math.floorDiv(-upper, lower);
    }

    /** The nearest whole number, a half upwards. */
    long roundedHalfUp() {
        return plus(of(1, 2)).roundedDown();
    }

    @Override
    public int compareTo(Fraction other) {
        return Long.compare(Math.multiplyExact(upper, other.lower), Math.multiplyExact(other.upper, lower));
    }

    @Override
    public String toString() {
        return lower == 1 ? Long.toString(upper) : upper + "/" + lower;
    }
}
