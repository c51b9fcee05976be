package org.loomwright.core.electrical.check.current;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.testing.Bench;
import org.loomwright.testing.LoomSketch;

import java.math.BigDecimal;
import java.util.List;

/**
 * The published drops of key T1 over 5 m of vehicle cable at its rating, and of V6 (4.17 A, 5 m, 12.7 mΩ/m: 0.265 V), found again by a
 * whole loom and its simulation.
 *
 * <p>A load of the simulation is a resistor, so the current is a little less than the published one; drop over the voltage at the load does
 * not depend on that: it is published drop over 12 V.
 */
class PublishedDropsReferenceTest {

    private static Loom loom(String size, String amperes) {
        Current load = Current.ofAmperes(new BigDecimal(amperes));
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 4_800)
                .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N1", "LIVE"))
                .device(Checked.device("L", DeviceKind.LAMP, load, "N2", "FEED"))
                .wire(Checked.wire("W1", size, "BATTERY/LIVE", "L/FEED"))
                .loom();
    }

    @ParameterizedTest
    @CsvSource({
        "9/0.30, 5.75, 0.845",
        "14/0.30, 8.75, 0.827",
        "21/0.30, 12.75, 0.797",
        "28/0.30, 17.5, 0.823",
        "35/0.30, 21.75, 0.816",
        "44/0.30, 25.5, 0.765",
        "1.5mm2-thick-wall, 4.17, 0.265"
    })
    void aPublishedDropIsThatOfTheLoomsLoad(String size, String amperes, double volts) {
        Loom loom = loom(size, amperes);
        Scenario scenario = Scenario.of("published", Engine.OFF, Temperature.ofCelsius(20));
        Readings readings =
                Checked.simulation(loom, Bench.BY_HAND).run(scenario).orElseThrow(Checked::refusal);
        List<LoadPath> paths = new Flow(loom, readings).paths();

        assertThat(paths)
                .singleElement()
                .satisfies(
                        path -> {
                            double lost = path.lost().toDoubleVolts();
                            double atLoad = path.supply().toDoubleVolts() - lost;
                            // Published to a millivolt; lost and supply are whole millivolts, too.
                            assertThat(12 * lost / atLoad).isCloseTo(volts, within(0.0017));
                        });
    }
}
