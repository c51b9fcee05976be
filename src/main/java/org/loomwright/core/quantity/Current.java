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

    /** @return amperes, exact, without trailing zeros and never in exponent form */
    public BigDecimal toAmperes() {
        BigDecimal stripped = BigDecimal.valueOf(milliamperes, DECIMALS).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
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
