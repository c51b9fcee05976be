package org.loomwright.app;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.simulation.StandardScenarios;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.open.Expectations;
import org.loomwright.exchange.TradeTables;

/**
 * What is needed to look at any loom from its electrical side.
 *
 * @param catalogue what documents refer to
 * @param tables what the trade's tables say about current
 * @param behaviours what devices do
 * @param scenarios the states in which every loom is looked at
 * @param expectations what services need to be complete
 * @param settings what no document says
 * @param solver does the linear algebra
 */
public record ElectricalParts(
        Catalogue catalogue,
        ElectricalTables tables,
        Behaviours behaviours,
        StandardScenarios scenarios,
        Expectations expectations,
        ElectricalSettings settings,
        LinearSolver solver) {

    /** @return that loom, ready for any scenario */
    public Simulation simulation(Loom loom) {
        return new Simulation(loom, catalogue, tables, behaviours, settings, solver);
    }

    /** @return the same with other tables, for example with a workshop's own figures */
    public ElectricalParts with(TradeTables others) {
        return new ElectricalParts(
                others.catalogue(),
                others.electrical(),
                behaviours,
                scenarios,
                expectations,
                settings,
                solver);
    }

    /** @return how the wires of that loom are fed */
    public Tracing tracing(Loom loom) {
        return Tracing.of(loom, catalogue, behaviours);
    }
}
