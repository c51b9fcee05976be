package org.loomwright.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An electric resistance in whole nanoohms: fine enough for a millimetre of battery cable, wide enough for nine gigaohms.
 *
 * <p>Immutable and thread-safe; overflow throws {@link ArithmeticException}. {@link #toString} gives ohms, for example
 * {@code 0.0189 Ω}.
 *
 * @param nanoohms the value in nanoohms
 */
public record Resistance(long nanoohms) implements Comparable<Resistance> {

    /** No resistance: an ideal connection. */
    public static final Resistance ZERO = new Resistance(0);

    private static final int DECIMALS = 9;

    /**
     * @param nanoohms whole nanoohms
     * @return that value
     */
    public static Resistance ofNanoohms(long nanoohms) {
        return new Resistance(nanoohms);
    }

    /**
     * @param ohms ohms with at most 9 decimals
     * @return that value, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static Resistance ofOhms(BigDecimal ohms) {
        return new Resistance(ohms.movePointRight(DECIMALS).longValueExact());
    }

    /**
     * @param ohms finite ohms out of a calculation in {@code double}
     * @return the nearest nanoohm, halves away from zero
     * @throws NumberFormatException if not finite
     */
    public static Resistance roundedFromOhms(double ohms) {
        return new Resistance(
                BigDecimal.valueOf(ohms)
                        .movePointRight(DECIMALS)
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValueExact());
    }

    /**
     * What a load is, taken as a resistor: Ohm's law.
     *
     * @param voltage the voltage at which it was rated
     * @param current what it draws at that voltage, more than zero
     * @return their quotient to the nearest nanoohm
     * @throws IllegalArgumentException if the current is not more than zero
     */
    public static Resistance of(Voltage voltage, Current current) {
        if (current.milliamperes() <= 0) {
            throw new IllegalArgumentException(
                    "a load's current must be more than zero, was " + current);
        }
        return roundedFromOhms((double) voltage.millivolts() / current.milliamperes());
    }

    /** @return ohms, exact, without trailing zeros and never in exponent form */
    public BigDecimal toOhms() {
        BigDecimal stripped = BigDecimal.valueOf(nanoohms, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return ohms as a {@code double} for calculation */
    public double toDoubleOhms() {
        return nanoohms / 1e9;
    }

    /**
     * @param other what follows in series
     * @return the exact sum
     */
    public Resistance plus(Resistance other) {
        return new Resistance(Math.addExact(nanoohms, other.nanoohms));
    }

    @Override
    public int compareTo(Resistance other) {
        return Long.compare(nanoohms, other.nanoohms);
    }

    @Override
    public String toString() {
        return toOhms().toPlainString() + " Ω";
    }
}
