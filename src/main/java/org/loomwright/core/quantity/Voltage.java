package org.loomwright.core.quantity;

import java.math.BigDecimal;

/**
 * An electric potential difference in whole millivolts.
 *
 * <p>Immutable and thread-safe; overflow throws {@link ArithmeticException}. {@link #toString} gives volts, for example
 * {@code 12 V}.
 *
 * @param millivolts the value in millivolts
 */
public record Voltage(long millivolts) implements Comparable<Voltage> {

    /** Nothing. */
    public static final Voltage ZERO = new Voltage(0);

    private static final int DECIMALS = 3;

    /**
     * @param millivolts whole millivolts
     * @return that value
     */
    public static Voltage ofMillivolts(long millivolts) {
        return new Voltage(millivolts);
    }

    /**
     * @param volts volts with at most 3 decimals
     * @return that value, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static Voltage ofVolts(BigDecimal volts) {
        return new Voltage(volts.movePointRight(DECIMALS).longValueExact());
    }

    /**
     * @param volts finite volts out of a calculation in {@code double}
     * @return the nearest thousandth, halves away from zero
     * @throws NumberFormatException if not finite
     */
    public static Voltage roundedFromVolts(double volts) {
        return new Voltage(Thousandths.rounded(volts));
    }

    /** @return volts, exact, without trailing zeros and never in exponent form */
    public BigDecimal toVolts() {
        BigDecimal stripped = BigDecimal.valueOf(millivolts, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return volts as a {@code double} for calculation */
    public double toDoubleVolts() {
        return millivolts / 1e3;
    }

    /**
     * @param other the other voltage
     * @return the exact sum
     */
    public Voltage plus(Voltage other) {
        return new Voltage(Math.addExact(millivolts, other.millivolts));
    }

    @Override
    public int compareTo(Voltage other) {
        return Long.compare(millivolts, other.millivolts);
    }

    @Override
    public String toString() {
        return toVolts().toPlainString() + " V";
    }
}
