package org.loomwright.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;

/**
 * A length in whole micrometres, positive, zero or negative (a difference of two lengths may be negative).
 *
 * <p>Range: about plus or minus 9.2 million kilometres; beyond it {@link ArithmeticException}. {@link #toString} gives
 * millimetres without trailing zeros, for example {@code 812.5 mm}. Immutable and thread-safe.
 *
 * @param micrometres the length in micrometres
 */
public record Length(long micrometres) implements Comparable<Length> {

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    private static final int DECIMALS = 3;
    private static final long MICROMETRES_PER_MILLIMETRE = 1_000;

    /**
     * @param micrometres whole micrometres
     * @return that length
     */
    public static Length ofMicrometres(long micrometres) {
        return new Length(micrometres);
    }

    /**
     * @param millimetres whole millimetres
     * @return that length
     * @throws ArithmeticException on overflow
     */
    public static Length ofMillimetres(long millimetres) {
        return new Length(Math.multiplyExact(millimetres, MICROMETRES_PER_MILLIMETRE));
    }

    /**
     * @param millimetres millimetres with at most three decimals
     * @return that length, exactly
     * @throws ArithmeticException if it has more than three decimals or overflows
     */
    public static Length ofMillimetres(BigDecimal millimetres) {
        return new Length(millimetres.movePointRight(DECIMALS).longValueExact());
    }

    /**
     * The edge from geometry, which works in {@code double} millimetres: the one place that rounds.
     *
     * @param millimetres finite millimetres
     * @param rounding how to reach whole micrometres; a diameter that must not be understated takes {@code CEILING}
     * @return the rounded length
     * @throws NumberFormatException if not finite
     */
    public static Length roundedFromMillimetres(double millimetres, RoundingMode rounding) {
        return new Length(
                BigDecimal.valueOf(millimetres)
                        .movePointRight(DECIMALS)
                        .setScale(0, rounding)
                        .longValueExact());
    }

    /**
     * @param lengths any number of lengths
     * @return their exact sum, zero for none
     */
    public static Length sum(Collection<Length> lengths) {
        return lengths.stream().reduce(ZERO, Length::plus);
    }

    /** @return millimetres, exact, without trailing zeros and never in exponent form */
    public BigDecimal toMillimetres() {
        BigDecimal stripped = BigDecimal.valueOf(micrometres, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return millimetres as a {@code double} for geometry */
    public double toDoubleMillimetres() {
        return micrometres / (double) MICROMETRES_PER_MILLIMETRE;
    }

    /**
     * @param other the other length
     * @return the exact sum
     */
    public Length plus(Length other) {
        return new Length(Math.addExact(micrometres, other.micrometres));
    }

    /**
     * @param other the length to take away
     * @return the exact difference, negative if the other is longer
     */
    public Length minus(Length other) {
        return new Length(Math.subtractExact(micrometres, other.micrometres));
    }

    /**
     * @param factor how many times
     * @return the exact product
     */
    public Length times(long factor) {
        return new Length(Math.multiplyExact(micrometres, factor));
    }

    /**
     * @param ratio a plain ratio
     * @param rounding how to reach whole micrometres
     * @return the scaled length
     */
    public Length times(Ratio ratio, RoundingMode rounding) {
        return new Length(
                BigDecimal.valueOf(micrometres)
                        .multiply(BigDecimal.valueOf(ratio.millionths(), Ratio.DECIMALS))
                        .setScale(0, rounding)
                        .longValueExact());
    }

    /**
     * @param step a positive step
     * @return the smallest whole multiple of the step that is not less than this length
     * @throws IllegalArgumentException if the step is not positive
     */
    public Length ceilingTo(Length step) {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("a rounding step must be positive, was " + step);
        }
        return step.times(Math.ceilDiv(micrometres, step.micrometres));
    }

    /** @return the same length without its sign */
    public Length absolute() {
        return new Length(Math.absExact(micrometres));
    }

    /** @return whether it is more than zero */
    public boolean isPositive() {
        return micrometres > 0;
    }

    /** @return whether it is less than zero */
    public boolean isNegative() {
        return micrometres < 0;
    }

    /**
     * @param other another length
     * @return whether this one is longer
     */
    public boolean isLongerThan(Length other) {
        return micrometres > other.micrometres;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(micrometres, other.micrometres);
    }

    @Override
    public String toString() {
        return toMillimetres().toPlainString() + " mm";
    }
}
