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

    /** @return volts, exact, without trailing zeros and never in exponent form */
    public BigDecimal toVolts() {
        BigDecimal stripped = BigDecimal.valueOf(millivolts, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
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
