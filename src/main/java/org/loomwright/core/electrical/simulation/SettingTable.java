package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.simulation.ElectricalSettings.GeneratorOutput;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Resistance;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.core.routing.Allowances;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The settings by their names; every row is used once. */
final class SettingTable {

    private static final int MILLI = 3;

    private final Map<String, SettingRow> rows = new TreeMap<>();

    SettingTable(List<SettingRow> rows) {
        for (SettingRow row : rows) {
            if (this.rows.put(row.name(), row) != null) {
                throw new IllegalArgumentException("setting " + row.name() + " stands twice");
            }
        }
    }

    ElectricalSettings settings(Allowances allowances) {
        ElectricalSettings settings =
                new ElectricalSettings(
                        volts("battery-voltage"),
                        milliohms("battery-resistance"),
                        volts("regulated-voltage"),
                        milliohms("generator-resistance"),
                        output("dynamo"),
                        output("alternator"),
                        Map.of(),
                        milliohms("contact-resistance"),
                        milliohms("earth-resistance"),
                        amperes("relay-coil"),
                        share("relay-pull-in"),
                        share("relay-drop-out"),
                        amperes("flasher-least"),
                        share("flasher-duty"),
                        amperes("dynamo-field"),
                        amperes("alternator-field"),
                        amperes("least-exciting"),
                        allowances);
        if (!rows.isEmpty()) {
            throw new IllegalArgumentException("there is no setting " + rows.keySet());
        }
        return settings;
    }

    private GeneratorOutput output(String generator) {
        return new GeneratorOutput(amperes(generator + "-idle"), amperes(generator + "-at-speed"));
    }

    private Voltage volts(String name) {
        return Voltage.ofVolts(take(name, "V"));
    }

    private Current amperes(String name) {
        return Current.ofAmperes(take(name, "A"));
    }

    private Resistance milliohms(String name) {
        return Resistance.ofOhms(take(name, "mΩ").movePointLeft(MILLI));
    }

    private Ratio share(String name) {
        return Ratio.of(take(name, "share"));
    }

    private BigDecimal take(String name, String unit) {
        SettingRow row = rows.remove(name);
        if (row == null) {
            throw new IllegalArgumentException("setting " + name + " is missing");
        }
        if (!row.unit().equals(unit)) {
            throw new IllegalArgumentException(
                    "setting %s is in %s, was %s".formatted(name, unit, row.unit()));
        }
        return row.value();
    }
}
