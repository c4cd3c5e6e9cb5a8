package weekwright.engine.recalculation;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Duration;
import java.time.Instant;

/** An exact number: 8/3 stays 8/3. The lower part is positive and the two have no common factor. */
record Fraction(BigInteger upper, BigInteger lower) implements Comparable<Fraction> {
    static final Fraction ZERO = of(0);
    static final Fraction ONE = of(1);

    Fraction {
        if (lower.signum() == 0) {
            throw new ArithmeticException("a fraction over nothing");
        }
        BigInteger common = upper.gcd(lower).max(BigInteger.ONE);
        common = lower.signum() < 0 ? common.negate() : common;
        upper = upper.divide(common);
        lower = lower.divide(common);
    }

    static Fraction of(long whole) {
        return of(whole, 1);
    }

    static Fraction of(long upper, long lower) {
        return new Fraction(BigInteger.valueOf(upper), BigInteger.valueOf(lower));
    }

    /** The number as it is written in decimals: 0.95 is 19/20. */
    static Fraction of(double written) {
        BigDecimal decimal = BigDecimal.valueOf(written);
        return decimal.scale() <= 0
                ? new Fraction(decimal.toBigIntegerExact(), BigInteger.ONE)
                : new Fraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    /** Elapsed hours from one instant to another, negative where the second comes first. */
    static Fraction hours(Instant from, Instant to) {
        return of(Duration.between(from, to).toSeconds(), 3600);
    }

    Fraction plus(Fraction other) {
        return new Fraction(upper.multiply(other.lower).add(other.upper.multiply(lower)), lower.multiply(other.lower));
    }

    Fraction minus(Fraction other) {
        return plus(other.times(of(-1)));
    }

    Fraction times(Fraction other) {
        return new Fraction(upper.multiply(other.upper), lower.multiply(other.lower));
    }

    Fraction times(long whole) {
        return times(of(whole));
    }

    Fraction dividedBy(Fraction other) {
        return new Fraction(upper.multiply(other.lower), lower.multiply(other.upper));
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
        return upper.signum() > 0;
    }

    /** The greatest whole number that is not above. */
    long roundedDown() {
        BigInteger[] parts = upper.divideAndRemainder(lower);
        return parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
    }

    /** The least whole number that is not below. */
    long roundedUp() {
        return -times(-1).roundedDown();
    }

    /** The nearest whole number, a half upwards. */
    long roundedHalfUp() {
        return plus(of(1, 2)).roundedDown();
    }

    @Override
    public int compareTo(Fraction other) {
        return upper.multiply(other.lower).compareTo(other.upper.multiply(lower));
    }

    @Override
    public String toString() {
        return lower.equals(BigInteger.ONE) ? upper.toString() : upper + "/" + lower;
    }
}
