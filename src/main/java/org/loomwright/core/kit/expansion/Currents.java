package org.loomwright.core.kit.expansion;

import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Current;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What flows in a loom as it is, at the worst of the standard scenarios. Where no scenario can be simulated: what the loads draw together,
 * with flashers on one side only and no starter.
 */
final class Currents {

    private static final String STARTING = "starting";
    private static final String LEFT = "flashers-left";
    private static final String RIGHT = "flashers-right";

    private final Loom loom;
    private final Tracing tracing;
    private final KitBench bench;
    private final List<Readings> readings = new ArrayList<>();
    private final Map<String, Current> wires = new HashMap<>();
    private final Map<String, Current> elements = new HashMap<>();

    Currents(Loom loom, Tracing tracing, KitBench bench) {
        this.loom = loom;
        this.tracing = tracing;
        this.bench = bench;
        Simulation simulation =
                new Simulation(
                        loom,
                        bench.catalogue(),
                        bench.tables(),
                        bench.behaviours(),
                        bench.settings().electrical(),
                        bench.solver());
        for (Scenario scenario : bench.scenarios().of(loom, bench.catalogue())) {
            switch (simulation.run(scenario)) {
                case Outcome.Accepted<Readings>(Readings read) -> note(read);
                case Outcome.Rejected<Readings>(List<Finding> reasons) -> {}
            }
        }
    }

    private void note(Readings read) {
        readings.add(read);
        for (WireReading wire : read.wires()) {
            wires.merge(wire.wire(), absolute(wire.current()), WireMaker::most);
        }
        for (ElementReading element : read.elements()) {
            elements.merge(
                    key(element.device(), element.from(), element.to()),
                    absolute(element.current()),
                    WireMaker::most);
        }
    }

    private static Current absolute(Current current) {
        return Current.ofMilliamperes(Math.abs(current.milliamperes()));
    }

    private static String key(String device, String one, String other) {
        return one.compareTo(other) < 0
                ? device + "/" + one + "/" + other
                : device + "/" + other + "/" + one;
    }

    /** Every scenario that could be simulated. */
    List<Readings> readings() {
        return readings;
    }

    Current in(String wire) {
        Current worst = wires.get(wire);
        return worst != null ? worst : together(tracing.get(wire).loads());
    }

    /** Through something inside a device. */
    Current through(Passed passed, Collection<String> loads) {
        Current worst = elements.get(key(passed.device(), passed.from(), passed.to()));
        return worst != null ? worst : together(loads);
    }

    /** What loads of the loom draw together. */
    Current together(Collection<String> devices) {
        Map<String, Long> byService = new HashMap<>();
        for (String id : devices) {
            Device device = loom.getDevice(id);
            String service =
                    Tracing.serviceOf(device, bench.catalogue()).map(Service::code).orElse("");
            byService.merge(service, of(device).milliamperes(), Long::sum);
        }
        byService.remove(STARTING);
        long left = byService.getOrDefault(LEFT, 0L);
        long right = byService.getOrDefault(RIGHT, 0L);
        long sum = byService.values().stream().mapToLong(Long::longValue).sum();
        return Current.ofMilliamperes(sum - Math.min(left, right));
    }

    private Current of(Device device) {
        Current load = device.load();
        if (load != null) {
            return load;
        }
        return device.kind() == DeviceKind.RELAY
                ? bench.settings().electrical().relayCoil()
                : Current.ZERO;
    }
}
