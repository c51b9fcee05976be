package org.loomwright.core.electrical.check.current;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.LoomSketch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Ratings less for what warms them, by hand. */
class AllowedCurrentsTest {

    /** Eight wires along S1, of which three go on along S2; W1 to W3 are 14/0.30. */
    private static Loom eightWires() {
        LoomSketch sketch =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 500)
                        .segment("S2", "N2", "N3", 500)
                        .device("A", DeviceKind.JOINT, "N1")
                        .device("B", DeviceKind.JOINT, "N2")
                        .device("C", DeviceKind.JOINT, "N3");
        for (int i = 1; i <= 8; i++) {
            sketch.wire("W" + i, "N", "A/1", i <= 5 ? "B/1" : "C/1");
        }
        return sketch.wire("W9", "N", "B/1", "C/1").loom();
    }

    private static Readings readings(Loom loom, int celsius, Map<String, Long> milliamperes) {
        List<WireReading> wires = new ArrayList<>();
        for (String wire : loom.wires().keySet()) {
            wires.add(
                    new WireReading(
                            wire,
                            Current.ofMilliamperes(milliamperes.getOrDefault(wire, 0L)),
                            Voltage.ZERO));
        }
        Scenario scenario = Scenario.of("test", Engine.OFF, Temperature.ofCelsius(celsius));
        return new Readings(scenario, wires, List.of(), Map.of(), Set.of(), List.of());
    }

    private static Current allowed(InScenario currents, String wire) {
        return currents.allowed(currents.find(wire));
    }

    private static Current milliamperes(long milliamperes) {
        return Current.ofMilliamperes(milliamperes);
    }

    @Test
    void aWireAloneMayCarryItsRating() {
        Loom loom = eightWires();
        InScenario currents = Checked.allowed(loom).in(readings(loom, 20, Map.of("W1", 5_000L)));
        assertThat(allowed(currents, "W1")).isEqualTo(milliamperes(8_750));
        assertThat(currents.loadedWires(currents.find("W1"))).isEqualTo(1);
    }

    @Test
    void theFullestSegmentOfTheRouteCounts() {
        Loom loom = eightWires();
        Map<String, Long> four = Map.of("W1", 5_000L, "W2", 5_000L, "W6", -5_000L, "W9", 1_000L);
        Map<String, Long> more = new HashMap<>(four);
        more.put("W3", 5_000L);
        InScenario three = Checked.allowed(loom).in(readings(loom, 20, four));
        InScenario fifth = Checked.allowed(loom).in(readings(loom, 20, more));

        // W1, W2 and W6 in S1: no factor. With W3 four of them: 0.8 x 8.75 A. W9 lies in S2 with W6
        // alone.
        assertThat(allowed(three, "W6")).isEqualTo(milliamperes(8_750));
        assertThat(allowed(fifth, "W6")).isEqualTo(milliamperes(7_000));
        assertThat(allowed(fifth, "W9")).isEqualTo(milliamperes(8_750));
        assertThat(fifth.loadedWires(fifth.find("W9"))).isEqualTo(2);
    }

    @Test
    void aWireThatCarriesLittleWarmsNobody() {
        Loom loom = eightWires();
        Map<String, Long> little =
                Map.of("W1", 5_000L, "W2", 874L, "W3", 874L, "W4", 874L, "W5", 874L);
        Map<String, Long> enough =
                Map.of("W1", 5_000L, "W2", 875L, "W3", 875L, "W4", 875L, "W5", 874L);
        assertThat(allowed(Checked.allowed(loom).in(readings(loom, 20, little)), "W1"))
                .isEqualTo(milliamperes(8_750));
        assertThat(allowed(Checked.allowed(loom).in(readings(loom, 20, enough)), "W1"))
                .isEqualTo(milliamperes(7_000));
    }

    @Test
    void anIdleWireCountsItselfBesideTheLoadedOnes() {
        Loom loom = eightWires();
        Map<String, Long> three = Map.of("W1", 5_000L, "W2", 5_000L, "W3", 5_000L);
        InScenario currents = Checked.allowed(loom).in(readings(loom, 20, three));
        assertThat(allowed(currents, "W1")).isEqualTo(milliamperes(8_750));
        assertThat(allowed(currents, "W4")).isEqualTo(milliamperes(7_000));
    }

    @Test
    void aWarmPlaceTakesItsShareAndAColdOneGivesNothing() {
        Loom loom = eightWires();
        Map<String, Long> one = Map.of("W1", 5_000L);
        // PVC stands 70 °C: sqrt(20 / 40) = 0.7071 at 50 °C.
        assertThat(allowed(Checked.allowed(loom).in(readings(loom, 50, one)), "W1"))
                .isEqualTo(milliamperes(6_187));
        assertThat(allowed(Checked.allowed(loom).in(readings(loom, -10, one)), "W1"))
                .isEqualTo(milliamperes(8_750));
        assertThat(allowed(Checked.allowed(loom).in(readings(loom, 70, one)), "W1"))
                .isEqualTo(Current.ZERO);
    }

    @Test
    void theFigureIsThatOfTheChainThatIsShown() {
        Loom loom = eightWires();
        for (int celsius = -20; celsius <= 80; celsius += 7) {
            Map<String, Long> all = new HashMap<>();
            for (int i = 1; i <= 8; i++) {
                all.put("W" + i, 1_000L * i);
                InScenario currents = Checked.allowed(loom).in(readings(loom, celsius, all));
                for (int wire = 0; wire < 9; wire++) {
                    assertThat(currents.allowed(wire)).isEqualTo(currents.derating(wire).left());
                }
            }
        }
    }
}
