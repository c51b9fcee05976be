package org.loomwright.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The resistance of a conductor for each metre of its length, in whole nanoohms per metre.
 *
 * <p>Immutable and thread-safe; overflow throws {@link ArithmeticException}. {@link #toString} gives milliohms per metre, for
 * example {@code 18.9 mΩ/m}.
 *
 * @param nanoohmsPerMetre the value in nanoohms per metre
 */
public record LinearResistance(long nanoohmsPerMetre) implements Comparable<LinearResistance> {

    private static final int MILLIOHM_DECIMALS = 6;

    /**
     * @param milliohms milliohms per metre with at most 6 decimals
     * @return that value, exactly
     * @throws ArithmeticException if it has more decimals or overflows
     */
    public static LinearResistance ofMilliohmsPerMetre(BigDecimal milliohms) {
        return new LinearResistance(milliohms.movePointRight(MILLIOHM_DECIMALS).longValueExact());
    }

    /**
     * @param milliohms finite milliohms per metre out of a calculation in {@code double}
     * @return the nearest nanoohm per metre, halves away from zero
     * @throws NumberFormatException if not finite
     */
    public static LinearResistance roundedFromMilliohmsPerMetre(double milliohms) {
        return new LinearResistance(
                BigDecimal.valueOf(milliohms)
                        .movePointRight(MILLIOHM_DECIMALS)
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValueExact());
    }

    /** @return milliohms per metre, exact, without trailing zeros and never in exponent form */
    public BigDecimal toMilliohmsPerMetre() {
        BigDecimal stripped =
                BigDecimal.valueOf(nanoohmsPerMetre, MILLIOHM_DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** @return milliohms per metre as a {@code double} for calculation */
    public double toDoubleMilliohmsPerMetre() {
        return nanoohmsPerMetre / 1e6;
    }

    /**
     * @param length how much of the conductor
     * @return its resistance to the nearest nanoohm
     */
    public Resistance times(Length length) {
        return Resistance.roundedFromOhms(
                nanoohmsPerMetre / 1e9 * (length.toDoubleMillimetres() / 1e3));
    }

    @Override
    public int compareTo(LinearResistance other) {
        return Long.compare(nanoohmsPerMetre, other.nanoohmsPerMetre);
    }

    @Override
    public String toString() {
        return toMilliohmsPerMetre().toPlainString() + " mΩ/m";
    }
}
