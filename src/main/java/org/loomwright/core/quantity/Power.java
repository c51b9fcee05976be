package org.loomwright.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An electric power in whole milliwatts.
 *
 * <p>Immutable and thread-safe; overflow throws {@link ArithmeticException}. {@link #toString} gives watts, for example
 * {@code 42 W}.
 *
 * @param milliwatts the value in milliwatts
 */
public record Power(long milliwatts) implements Comparable<Power> {

    private static final int DECIMALS = 3;

    /**
     * @param watts watts with at most 3 decimals
     * @return that value, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static Power ofWatts(BigDecimal watts) {
        return new Power(watts.movePointRight(DECIMALS).longValueExact());
    }

    /**
     * @param voltage across the thing
     * @param current through it
     * @return their product to the nearest milliwatt, halves away from zero
     */
    public static Power of(Voltage voltage, Current current) {
        return ofWatts(
                voltage.toVolts()
                        .multiply(current.toAmperes())
                        .setScale(DECIMALS, RoundingMode.HALF_UP));
    }

    /**
     * @param voltage the voltage at which it is rated, more than zero
     * @return the current that it draws there, to the nearest milliampere, halves away from zero
     * @throws IllegalArgumentException if the voltage is not more than zero
     */
    public Current at(Voltage voltage) {
        if (voltage.millivolts() <= 0) {
            throw new IllegalArgumentException(
                    "a rated voltage must be more than zero, was " + voltage);
        }
        return Current.ofAmperes(
                toWatts().divide(voltage.toVolts(), DECIMALS, RoundingMode.HALF_UP));
    }

    /** @return watts, exact, without trailing zeros and never in exponent form */
    public BigDecimal toWatts() {
        BigDecimal stripped = BigDecimal.valueOf(milliwatts, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    @Override
    public int compareTo(Power other) {
        return Long.compare(milliwatts, other.milliwatts);
    }

    @Override
    public String toString() {
        return toWatts().toPlainString() + " W";
    }
}
