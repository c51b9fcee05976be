package org.loomwright.core.electrical.simulation;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.simulation.Settling.Settled;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Loom;

import java.util.List;

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
    private final ElectricalSettings settings;
    private final LinearSolver solver;
    private final Circuit circuit;
    private final List<Finding> ofDevices;

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
        this.settings = settings;
        this.solver = solver;
        this.circuit = new Circuit(wiring, tables, behaviours, settings);
        this.ofDevices = DeviceChecks.of(wiring, behaviours, circuit);
    }

    /**
     * @param scenario a state of the vehicle
     * @return the loom in it, once relays and generators have come to rest, or why it cannot be in that state
     */
    public Outcome<SettledLoom> settle(Scenario scenario) {
        List<Finding> impossible = ScenarioCheck.of(wiring, scenario);
        if (!impossible.isEmpty()) {
            return Outcome.rejected(impossible);
        }
        Settled settled =
                new Settling(circuit, scenario, settings, wiring.system(), solver).settle();
        return Outcome.accepted(
                new SettledLoom(wiring, circuit, settings, solver, scenario, settled, ofDevices));
    }

    /**
     * @param scenario a state of the vehicle
     * @return readings, or why the loom cannot be in that state
     */
    public Outcome<Readings> run(Scenario scenario) {
        return settle(scenario).map(SettledLoom::readings);
    }

    /**
     * @param scenario a state of the vehicle
     * @return the loom in it, to be asked what a short to the body would draw, or why the loom cannot be in that state
     */
    public Outcome<ShortedNet> shorted(Scenario scenario) {
        return settle(scenario).map(SettledLoom::shorted);
    }
}
