package org.loomwright.core.electrical.check;

import java.math.BigDecimal;

/**
 * A number with its unit.
 *
 * @param value the number, as many decimals as it deserves
 * @param unit its unit, for example {@code A}, {@code V}, {@code %} or {@code s}
 */
public record Figure(BigDecimal value, String unit) {

    /** @return this less the other, in the same unit */
    public Figure minus(Figure other) {
        if (!unit.equals(other.unit)) {
            throw new IllegalArgumentException(
                    "%s and %s have different units".formatted(this, other));
        }
        return new Figure(value.subtract(other.value), unit);
    }

    @Override
    public String toString() {
        return value.toPlainString() + " " + unit;
    }
}
