package org.loomwright.core.quantity;

import java.math.BigDecimal;

/**
 * A temperature in whole thousandths of a degree Celsius, never below absolute zero.
 *
 * <p>Immutable and thread-safe. {@link #toString} gives degrees, for example {@code 20 °C}.
 *
 * @param millidegrees the value in thousandths of a degree Celsius, from -273,150
 */
public record Temperature(long millidegrees) implements Comparable<Temperature> {

    private static final int DECIMALS = 3;
    private static final long ABSOLUTE_ZERO = -273_150;

    public Temperature {
        if (millidegrees < ABSOLUTE_ZERO) {
            throw new IllegalArgumentException(
                    "no temperature lies below -273.15 °C, was "
                            + BigDecimal.valueOf(millidegrees, DECIMALS).toPlainString());
        }
    }

    /**
     * @param degrees whole degrees Celsius
     * @return that temperature
     */
    public static Temperature ofCelsius(long degrees) {
        return new Temperature(Math.multiplyExact(degrees, 1_000L));
    }

    /**
     * @param degrees degrees Celsius with at most 3 decimals
     * @return that temperature, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static Temperature ofCelsius(BigDecimal degrees) {
        return new Temperature(degrees.movePointRight(DECIMALS).longValueExact());
    }

    /** @return degrees Celsius, exact, without trailing zeros and never in exponent form */
    public BigDecimal toCelsius() {
        BigDecimal stripped = BigDecimal.valueOf(millidegrees, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return degrees Celsius as a {@code double} for calculation */
    public double toDoubleCelsius() {
        return millidegrees / 1e3;
    }

    @Override
    public int compareTo(Temperature other) {
        return Long.compare(millidegrees, other.millidegrees);
    }

    @Override
    public String toString() {
        return toCelsius().toPlainString() + " °C";
    }
}
