package org.loomwright.core.catalogue;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a kind of consumer usually takes, as it is printed for a 12 V system.
 *
 * @param circuit the consumer in the source's words
 * @param part which filament of it, empty where there is one only
 * @param printed the source's figures as they are printed
 * @param service code of the service, or null where several may be meant
 * @param deviceKind kind of device in lower case with hyphens, for example {@code lamp}
 * @param pieces how many of them take it together, or null where the source does not say
 * @param low lower end of what they take
 * @param high upper end of what they take, no less than the lower
 * @param unit in which both are given
 * @param provenance where the figures come from
 */
public record TypicalLoad(
        String circuit,
        String part,
        String printed,
        @Nullable String service,
        String deviceKind,
        @Nullable Integer pieces,
        BigDecimal low,
        BigDecimal high,
        Unit unit,
        Provenance provenance) {

    private static final BigDecimal PRINTED_VOLTS = BigDecimal.valueOf(12);

    /** In which unit a load is printed. */
    public enum Unit {
        /** Power of a lamp or a heater; it holds for every system voltage that the lamp is made for. */
        WATTS,
        /** Current at 12 V. */
        AMPERES
    }

    public TypicalLoad {
        if (low.signum() <= 0 || low.compareTo(high) > 0) {
            throw new IllegalArgumentException(
                    "%s cannot take %s to %s".formatted(circuit, low, high));
        }
        if (pieces != null && pieces < 1) {
            throw new IllegalArgumentException("%s is %d pieces".formatted(circuit, pieces));
        }
    }

    /**
     * @param system nominal voltage of the vehicle; the same thing made for 6 V takes twice the current
     * @return the least that one piece usually takes, to a milliampere; of all together where nobody says how many
     */
    public Current lowAt(Voltage system) {
        return at(low, system);
    }

    /**
     * @param system nominal voltage of the vehicle; the same thing made for 6 V takes twice the current
     * @return the most that one piece usually takes, to a milliampere; of all together where nobody says how many
     */
    public Current highAt(Voltage system) {
        return at(high, system);
    }

    private Current at(BigDecimal figure, Voltage system) {
        BigDecimal watts =
                switch (unit) {
                    case WATTS -> figure;
                    case AMPERES -> figure.multiply(PRINTED_VOLTS);
                };
        BigDecimal volts =
                system.toVolts().multiply(BigDecimal.valueOf(pieces == null ? 1 : pieces));
        return Current.ofAmperes(watts.divide(volts, 3, RoundingMode.HALF_UP));
    }
}
