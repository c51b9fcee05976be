package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.network.Branch;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.electrical.simulation.Settling.Settled;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A loom in one scenario, with its relays and generators at rest, or caught in one moment where something never rests. To be read, and to
 * be asked what shorts would draw, without being solved twice. Immutable and thread-safe.
 */
public final class SettledLoom {

    private final Wiring wiring;
    private final Circuit circuit;
    private final ElectricalSettings settings;
    private final LinearSolver solver;
    private final Scenario scenario;
    private final Settled settled;
    private final List<Finding> ofDevices;

    SettledLoom(
            Wiring wiring,
            Circuit circuit,
            ElectricalSettings settings,
            LinearSolver solver,
            Scenario scenario,
            Settled settled,
            List<Finding> ofDevices) {
        this.wiring = wiring;
        this.circuit = circuit;
        this.settings = settings;
        this.solver = solver;
        this.scenario = scenario;
        this.settled = settled;
        this.ofDevices = ofDevices;
    }

    /** @return what a meter would show */
    public Readings readings() {
        return new Readings(
                scenario, wires(), elements(), points(), settled.state().pulledIn(), findings());
    }

    /** @return the loom, to be asked what a short to the body would draw */
    public ShortedNet shorted() {
        return new ShortedNet(circuit, wiring.conductors(), settled, scenario, solver);
    }

    private List<WireReading> wires() {
        List<WireReading> readings = new ArrayList<>();
        for (Wiring.Conductor wire : wiring.conductors()) {
            String id = Circuit.idOf(wire);
            Branch branch = settled.branch(id);
            readings.add(
                    new WireReading(
                            wire.wire(),
                            settled.solution().current(id),
                            settled.solution().across(branch)));
        }
        return readings;
    }

    private List<ElementReading> elements() {
        List<ElementReading> readings = new ArrayList<>();
        for (Placed element : settled.elements()) {
            Branch branch = settled.branch(element.id());
            Voltage across = settled.solution().across(branch);
            boolean isTurned = !branch.from().equals(element.fromNode());
            readings.add(
                    new ElementReading(
                            element.device().id(),
                            element.element(),
                            element.from(),
                            element.to(),
                            isTurned ? Voltage.ofMillivolts(-across.millivolts()) : across,
                            current(element)));
        }
        return readings;
    }

    /** What a dynamo gives its own field is not counted as given. */
    private Current current(Placed element) {
        Current current = settled.solution().current(element.id());
        boolean feedsField =
                element.element() == Element.GENERATOR && settled.state().isSteady(element);
        return feedsField
                ? Current.ofMilliamperes(
                        current.milliamperes() - circuit.ownField(element).milliamperes())
                : current;
    }

    private Map<String, Voltage> points() {
        Map<String, Voltage> voltages = new LinkedHashMap<>();
        for (Device device : wiring.devices().values()) {
            for (Point point : device.points()) {
                String place = device.id() + "/" + point.name();
                settled.solution()
                        .findVoltage(place)
                        .ifPresent(voltage -> voltages.put(place, voltage));
            }
        }
        return voltages;
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(ofDevices);
        findings.addAll(new DeadShorts(settled, scenario.name()).findings());
        findings.addAll(ExcitationCheck.of(circuit, scenario, settled, settings.leastExciting()));
        findings.addAll(SolutionChecks.of(scenario, settled));
        return findings.stream().sorted(Finding.WORST_FIRST).toList();
    }
}
