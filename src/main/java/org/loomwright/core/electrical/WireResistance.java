package org.loomwright.core.electrical;

import org.loomwright.core.catalogue.ConductorMetal;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Temperature;

/**
 * What a wire resists at the temperature of its conductor.
 *
 * <p>Source: R = R20 (1 + a20 (T - 20 °C)) with a20 = 0.00393 per kelvin for annealed copper (Industrial Power Engineering and
 * Applications Handbook, p. 970, key P2). FAA AC 43.13-1B, p. 11-22, uses 254.5 / (234.5 + T) instead, which is a20 = 0.0039293;
 * up to 100 °C the two differ by less than 0.01 %. P2 is followed because it gives the coefficient itself. The figure at 20 °C and
 * its own source stand in the table. Exact to the nanoohm. Immutable and thread-safe.
 */
public final class WireResistance {

    private static final double REFERENCE_CELSIUS = 20;

    private final ElectricalTables tables;

    /**
     * @param tables the trade's tables
     */
    public WireResistance(ElectricalTables tables) {
        this.tables = tables;
    }

    /**
     * @param size designation of a conductor size in the tables
     * @param conductor temperature of the metal, -60 °C to 200 °C
     * @return its resistance per metre
     * @throws IllegalArgumentException if the tables have no such size or the temperature is out of range
     */
    public LinearResistance perMetre(String size, Temperature conductor) {
        return corrected(tables.getResistance(size).at20(), tables.metal(), conductor);
    }

    /**
     * @param size designation of a conductor size in the tables
     * @param length of the wire
     * @param conductor temperature of the metal, -60 °C to 200 °C
     * @return its resistance, one way
     * @throws IllegalArgumentException if the tables have no such size or the temperature is out of range
     */
    public Resistance of(String size, Length length, Temperature conductor) {
        return perMetre(size, conductor).times(length);
    }

    /**
     * @param at20 resistance per metre at 20 °C
     * @param metal what the conductor is made of
     * @param conductor temperature of the metal, -60 °C to 200 °C
     * @return resistance per metre at that temperature
     * @throws IllegalArgumentException if the temperature is out of range
     */
    public static LinearResistance corrected(
            LinearResistance at20, ConductorMetal metal, Temperature conductor) {
        double celsius = ConductorRange.checked(conductor).toDoubleCelsius();
        double factor = 1 + metal.coefficient().toDouble() * (celsius - REFERENCE_CELSIUS);
        return LinearResistance.roundedFromMilliohmsPerMetre(
                at20.toDoubleMilliohmsPerMetre() * factor);
    }
}
