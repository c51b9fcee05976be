package org.loomwright.core.electrical.check.current;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Scenario.Engine;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.RandomLooms.Size;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** What holds for any loom and any current; seeds are fixed. */
class CurrentChecksProperties {

    private static final List<String> SIZES =
            List.of("9/0.30", "14/0.30", "21/0.30", "28/0.30", "35/0.30", "44/0.30", "65/0.30");

    private static Readings readings(Loom loom, long[] milliamperes) {
        List<WireReading> wires = new ArrayList<>();
        for (Wire wire : loom.wires().values()) {
            wires.add(
                    new WireReading(
                            wire.id(),
                            Current.ofMilliamperes(milliamperes[wires.size()]),
                            Voltage.ZERO));
        }
        Scenario scenario = Scenario.of("any", Engine.OFF, Temperature.ofCelsius(25));
        return new Readings(scenario, wires, List.of(), Map.of(), Set.of(), List.of());
    }

    @Test
    void oneMoreLoadedWireNeverRaisesWhatAnotherMayCarry() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            Loom loom = RandomLooms.of(seed, Size.CAR);
            AllowedCurrents wires = Checked.allowed(loom);
            long[] currents = new long[loom.wires().size()];
            InScenario before = wires.in(readings(loom, currents));
            for (int step = 0; step < 40; step++) {
                int loaded = random.nextInt(currents.length);
                currents[loaded] = random.nextInt(40_000) - 20_000;
                if (Math.abs(before.current(loaded).milliamperes()) > Math.abs(currents[loaded])) {
                    currents[loaded] = before.current(loaded).milliamperes();
                }
                InScenario after = wires.in(readings(loom, currents));
                for (int wire = 0; wire < currents.length; wire++) {
                    assertThat(after.allowed(wire))
                            .as("seed %d step %d wire %d", seed, step, wire)
                            .isLessThanOrEqualTo(before.allowed(wire));
                    assertThat(after.allowed(wire)).isLessThanOrEqualTo(wires.size(wire).rating());
                }
                before = after;
            }
        }
    }

    /** A battery with lamps on legs of any length, all of one size. */
    private static Loom star(long seed, String size) {
        Random random = new Random(seed);
        LoomSketch sketch =
                new LoomSketch("N0")
                        .segment("S0", "N0", "N1", 200)
                        .device(Checked.device("BATTERY", DeviceKind.BATTERY, null, "N0", "LIVE"));
        int lamps = 1 + random.nextInt(6);
        for (int i = 1; i <= lamps; i++) {
            String node = "N" + (i + 1);
            Current load = Current.ofMilliamperes(200 + random.nextInt(14_000));
            sketch.segment("S" + i, "N1", node, 300 + random.nextInt(6_000))
                    .device(Checked.device("L" + i, DeviceKind.LAMP, load, node, "FEED"))
                    .wire(Checked.wire("W" + i, size, "BATTERY/LIVE", "L" + i + "/FEED"));
        }
        return sketch.loom();
    }

    private static long failures(Loom loom, String code) {
        Scenario on = Scenario.of("on", Engine.OFF, Temperature.ofCelsius(40));
        return Checked.of(Checked.find(loom, on), code).size();
    }

    @Test
    void aThickerWireNeverFailsWhereAThinnerPassed() {
        for (long seed = 1; seed <= 25; seed++) {
            for (String code :
                    List.of("electrical.current-over-rating", "electrical.voltage-drop")) {
                long most = Long.MAX_VALUE;
                for (String size : SIZES) {
                    long failures = failures(star(seed, size), code);
                    assertThat(failures)
                            .as("seed %d, %s as %s", seed, code, size)
                            .isLessThanOrEqualTo(most);
                    most = failures;
                }
            }
        }
    }

    private static List<Readings> demo(Loom loom) {
        return Checked.readings(loom, ElectricalFiles.scenarios().of(loom, TestCatalogue.get()));
    }

    @Test
    void whatIsLostOnTheWayIsWhatTheLoadDoesNotGet() {
        Loom loom = DemoLooms.amended().loom();
        Observations observed = Observations.of(loom, Checked.allowed(loom), demo(loom));
        long paths = 0;
        for (Observed scenario : observed.scenarios()) {
            for (LoadPath path : scenario.paths()) {
                double sum = path.edges().stream().mapToLong(Flow.Edge::millivolts).sum();
                // Every reading is rounded to a millivolt.
                double rounding = 0.5 * path.edges().size() + 1;
                assertThat(sum)
                        .as("%s in %s", path.key(), scenario.scenario())
                        .isCloseTo(path.lost().millivolts(), within(rounding));
                paths++;
            }
        }
        assertThat(paths).isGreaterThan(100);
    }

    @Test
    void theOrderOfTheScenariosDoesNotMatter() {
        Loom loom = DemoLooms.main();
        List<Readings> readings = new ArrayList<>(demo(loom));
        List<ElectricalFinding> found = Checked.checks(loom).find(readings, null, Additions.NONE);
        Collections.shuffle(readings, new Random(7));
        List<ElectricalFinding> shuffled =
                Checked.checks(loom).find(readings, null, Additions.NONE);
        assertThat(shuffled)
                .extracting(ElectricalFinding::figure)
                .containsExactlyInAnyOrderElementsOf(
                        found.stream().map(ElectricalFinding::figure).toList());
        assertThat(found).hasSizeGreaterThan(5);
    }

    @Test
    void aThingIsToldOfOnceForEachRule() {
        Loom loom = DemoLooms.amended().loom();
        List<ElectricalFinding> found =
                Checked.checks(loom).find(demo(loom), null, Checked.additions(DemoLooms.amended()));
        assertThat(found)
                .filteredOn(one -> !one.finding().code().startsWith("electrical.fuse"))
                .extracting(one -> one.finding().code() + " " + one.finding().subject())
                .doesNotHaveDuplicates();
    }
}
