package org.loomwright.core.quantity;

import java.math.BigDecimal;

/**
 * The metal cross-section of a conductor in whole square micrometres.
 *
 * <p>Immutable and thread-safe; overflow throws {@link ArithmeticException}. {@link #toString} gives square millimetres, for example
 * {@code 0.9896 mm²}.
 *
 * @param squareMicrometres the value in square micrometres
 */
public record CrossSection(long squareMicrometres) implements Comparable<CrossSection> {

    private static final int DECIMALS = 6;

    /**
     * @param squareMicrometres whole square micrometres
     * @return that value
     */
    public static CrossSection ofSquareMicrometres(long squareMicrometres) {
        return new CrossSection(squareMicrometres);
    }

    /**
     * @param squareMillimetres square millimetres with at most 6 decimals
     * @return that value, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static CrossSection ofSquareMillimetres(BigDecimal squareMillimetres) {
        return new CrossSection(squareMillimetres.movePointRight(DECIMALS).longValueExact());
    }

    /** @return square millimetres, exact, without trailing zeros and never in exponent form */
    public BigDecimal toSquareMillimetres() {
        BigDecimal stripped = BigDecimal.valueOf(squareMicrometres, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return square millimetres as a {@code double} for calculation */
    public double toDoubleSquareMillimetres() {
        return squareMicrometres / 1e6;
    }

    @Override
    public int compareTo(CrossSection other) {
        return Long.compare(squareMicrometres, other.squareMicrometres);
    }

    @Override
    public String toString() {
        return toSquareMillimetres().toPlainString() + " mm²";
    }
}
