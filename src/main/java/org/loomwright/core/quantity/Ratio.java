package org.loomwright.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A plain ratio in whole millionths: a take-up of 1.5 % is 15,000 millionths, a lay factor of 1.04 is 1,040,000.
 *
 * <p>Immutable and thread-safe. {@link #toString} gives the decimal fraction, for example {@code 0.015}.
 *
 * @param millionths the ratio times one million
 */
public record Ratio(long millionths) implements Comparable<Ratio> {

    /** Nothing. */
    public static final Ratio ZERO = new Ratio(0);

    /** The whole. */
    public static final Ratio ONE = new Ratio(1_000_000);

    static final int DECIMALS = 6;

    /**
     * @param fraction a decimal fraction with at most six decimals
     * @return that ratio, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static Ratio of(BigDecimal fraction) {
        return new Ratio(fraction.movePointRight(DECIMALS).longValueExact());
    }

    /**
     * @param fraction a finite fraction out of a calculation in {@code double}
     * @param rounding how to reach whole millionths
     * @return the rounded ratio
     * @throws NumberFormatException if not finite
     */
    public static Ratio rounded(double fraction, RoundingMode rounding) {
        return new Ratio(
                BigDecimal.valueOf(fraction)
                        .movePointRight(DECIMALS)
                        .setScale(0, rounding)
                        .longValueExact());
    }

    /** @return the decimal fraction, without trailing zeros and never in exponent form */
    public BigDecimal toFraction() {
        BigDecimal stripped = BigDecimal.valueOf(millionths, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return the fraction as a {@code double} */
    public double toDouble() {
        return millionths / 1e6;
    }

    /**
     * @param other the other ratio
     * @return the exact sum
     */
    public Ratio plus(Ratio other) {
        return new Ratio(Math.addExact(millionths, other.millionths));
    }

    @Override
    public int compareTo(Ratio other) {
        return Long.compare(millionths, other.millionths);
    }

    @Override
    public String toString() {
        return toFraction().toPlainString();
    }
}
