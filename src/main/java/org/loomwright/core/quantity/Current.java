package org.loomwright.core.quantity;

import java.math.BigDecimal;

/**
 * An electric current in whole milliamperes.
 *
 * <p>Immutable and thread-safe; overflow throws {@link ArithmeticException}. {@link #toString} gives amperes, for example
 * {@code 9.17 A}.
 *
 * @param milliamperes the value in milliamperes
 */
public record Current(long milliamperes) implements Comparable<Current> {

    /** Nothing. */
    public static final Current ZERO = new Current(0);

    private static final int DECIMALS = 3;

    /**
     * @param milliamperes whole milliamperes
     * @return that value
     */
    public static Current ofMilliamperes(long milliamperes) {
        return new Current(milliamperes);
    }

    /**
     * @param amperes amperes with at most 3 decimals
     * @return that value, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static Current ofAmperes(BigDecimal amperes) {
        return new Current(amperes.movePointRight(DECIMALS).longValueExact());
    }

    /**
     * @param amperes finite amperes out of a calculation in {@code double}
     * @return the nearest thousandth, halves away from zero
     * @throws NumberFormatException if not finite
     */
    public static Current roundedFromAmperes(double amperes) {
        return new Current(Thousandths.rounded(amperes));
    }

    /** @return amperes, exact, without trailing zeros and never in exponent form */
    public BigDecimal toAmperes() {
        BigDecimal stripped = BigDecimal.valueOf(milliamperes, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return amperes as a {@code double} for calculation */
    public double toDoubleAmperes() {
        return milliamperes / 1e3;
    }

    /**
     * @param other the other current
     * @return the exact sum
     */
    public Current plus(Current other) {
        return new Current(Math.addExact(milliamperes, other.milliamperes));
    }

    @Override
    public int compareTo(Current other) {
        return Long.compare(milliamperes, other.milliamperes);
    }

    @Override
    public String toString() {
        return toAmperes().toPlainString() + " A";
    }
}
