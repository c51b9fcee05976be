package org.loomwright.core.electrical.simulation;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.network.Branch;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.electrical.simulation.Settling.Settled;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One loom, ready for any number of scenarios. Cost of a scenario: a few solutions of a network whose size is that of the loom.
 * Immutable and thread-safe.
 *
 * <p>Taken as: loads and coils are resistors of nominal voltage over rated current (a lamp below its voltage draws more than that, so
 * drops come out slightly small); the body has no resistance beside its earth screws; terminals and joints have none; all wires have
 * the scenario's temperature; flashers and contact breakers stay closed (flashing lamps read their peak; see {@link
 * Readings#drawnOnAverage}). A generator with a point for its field gives nothing unless current gets there.
 */
public final class Simulation {

    private final Wiring wiring;
    private final Behaviours behaviours;
    private final ElectricalSettings settings;
    private final LinearSolver solver;
    private final Circuit circuit;

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     * @param tables what the tables say about current
     * @param behaviours what devices do
     * @param settings what the loom does not say
     * @param solver does the linear algebra
     */
    public Simulation(
            Loom loom,
            Catalogue catalogue,
            ElectricalTables tables,
            Behaviours behaviours,
            ElectricalSettings settings,
            LinearSolver solver) {
        this(
                Wiring.of(loom, catalogue, settings.allowances()),
                tables,
                behaviours,
                settings,
                solver);
    }

    /**
     * @param wiring one loom or several
     * @param tables what the tables say about current
     * @param behaviours what devices do
     * @param settings what the looms do not say
     * @param solver does the linear algebra
     */
    public Simulation(
            Wiring wiring,
            ElectricalTables tables,
            Behaviours behaviours,
            ElectricalSettings settings,
            LinearSolver solver) {
        this.wiring = wiring;
        this.behaviours = behaviours;
        this.settings = settings;
        this.solver = solver;
        this.circuit = new Circuit(wiring, tables, behaviours, settings);
    }

    /**
     * @param scenario a state of the vehicle
     * @return readings, or why the loom cannot be in that state
     */
    public Outcome<Readings> run(Scenario scenario) {
        List<Finding> impossible = ScenarioCheck.of(wiring, scenario);
        if (!impossible.isEmpty()) {
            return Outcome.rejected(impossible);
        }
        Settled settled = settled(scenario);
        return Outcome.accepted(
                new Readings(
                        scenario,
                        wires(settled),
                        elements(settled),
                        points(settled),
                        settled.state().pulledIn(),
                        findings(scenario, settled)));
    }

    /**
     * @param scenario a state of the vehicle
     * @return the loom in it, to be asked what a short to the body would draw, or why the loom cannot be in that state
     */
    public Outcome<ShortedNet> shorted(Scenario scenario) {
        List<Finding> impossible = ScenarioCheck.of(wiring, scenario);
        if (!impossible.isEmpty()) {
            return Outcome.rejected(impossible);
        }
        return Outcome.accepted(
                new ShortedNet(circuit, wiring.conductors(), settled(scenario), scenario, solver));
    }

    private Settled settled(Scenario scenario) {
        return new Settling(circuit, scenario, settings, wiring.system(), solver).settle();
    }

    private List<WireReading> wires(Settled settled) {
        List<WireReading> readings = new ArrayList<>();
        for (Wiring.Conductor wire : wiring.conductors()) {
            String id = Circuit.idOf(wire);
            Branch branch = Objects.requireNonNull(settled.branches().get(id));
            readings.add(
                    new WireReading(
                            wire.wire(),
                            settled.solution().current(id),
                            settled.solution().across(branch)));
        }
        return readings;
    }

    private List<ElementReading> elements(Settled settled) {
        List<ElementReading> readings = new ArrayList<>();
        for (Placed element : settled.elements()) {
            Branch branch = Objects.requireNonNull(settled.branches().get(element.id()));
            Voltage across = settled.solution().across(branch);
            boolean isTurned = !branch.from().equals(element.fromNode());
            readings.add(
                    new ElementReading(
                            element.device().id(),
                            element.element(),
                            element.from(),
                            element.to(),
                            isTurned ? Voltage.ofMillivolts(-across.millivolts()) : across,
                            current(element, settled)));
        }
        return readings;
    }

    /** What a dynamo gives its own field is not counted as given. */
    private Current current(Placed element, Settled settled) {
        Current current = settled.solution().current(element.id());
        boolean feedsField =
                element.element() == Element.GENERATOR && settled.state().isSteady(element);
        return feedsField
                ? Current.ofMilliamperes(
                        current.milliamperes() - circuit.ownField(element).milliamperes())
                : current;
    }

    private Map<String, Voltage> points(Settled settled) {
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

    private List<Finding> findings(Scenario scenario, Settled settled) {
        List<Finding> findings = new ArrayList<>(DeviceChecks.of(wiring, behaviours, circuit));
        findings.addAll(new DeadShorts(settled, scenario.name()).findings());
        findings.addAll(ExcitationCheck.of(circuit, scenario, settled, settings.leastExciting()));
        findings.addAll(SolutionChecks.of(scenario, settled));
        return findings.stream().sorted(Finding.WORST_FIRST).toList();
    }
}
