package org.loomwright.core.electrical.simulation;

import org.loomwright.core.catalogue.Provenance;

import java.math.BigDecimal;

/**
 * One of the {@link ElectricalSettings} as it stands in the table, for people to see where it comes from.
 *
 * @param name for example {@code battery-voltage}
 * @param value the number
 * @param unit its unit: {@code V}, {@code A}, {@code mΩ} or {@code share}
 * @param meaning what it is, in words
 * @param provenance where it comes from
 */
public record SettingRow(
        String name, BigDecimal value, String unit, String meaning, Provenance provenance) {}
