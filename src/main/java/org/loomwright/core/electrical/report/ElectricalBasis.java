package org.loomwright.core.electrical.report;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.charging.ChargingSettings;
import org.loomwright.core.electrical.check.current.CurrentRules;
import org.loomwright.core.electrical.fault.FaultSettings;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.simulation.StandardScenarios;
import org.loomwright.core.electrical.structure.StructureSettings;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Loom;

/**
 * What every electrical report rests on besides the loom.
 *
 * @param catalogue what documents refer to
 * @param tables what the trade's tables say about current
 * @param rules the limits of currents, drops and fuses
 * @param behaviours what devices do
 * @param scenarios the states in which every loom is looked at
 * @param settings what no document says and a simulation needs
 * @param charging what the balance of charging takes for granted
 * @param structure what is taken for good practice
 * @param faults what a short circuit takes for granted
 * @param solver does the linear algebra
 */
public record ElectricalBasis(
        Catalogue catalogue,
        ElectricalTables tables,
        CurrentRules rules,
        Behaviours behaviours,
        StandardScenarios scenarios,
        ElectricalSettings settings,
        ChargingSettings charging,
        StructureSettings structure,
        FaultSettings faults,
        LinearSolver solver) {

    /** @return the same with other tables, for example with a workshop's own figures */
    public ElectricalBasis with(
            Catalogue otherCatalogue,
            ElectricalTables otherTables,
            CurrentRules otherRules,
            ElectricalSettings otherSettings) {
        return new ElectricalBasis(
                otherCatalogue,
                otherTables,
                otherRules,
                behaviours,
                scenarios,
                otherSettings,
                charging,
                structure,
                faults,
                solver);
    }

    /** @return that loom, ready for any scenario */
    public Simulation simulation(Loom loom) {
        return new Simulation(loom, catalogue, tables, behaviours, settings, solver);
    }

    /** @return how the wires of that loom are fed */
    public Tracing tracing(Loom loom) {
        return Tracing.of(loom, catalogue, behaviours);
    }
}
