package org.loomwright.core.kit.expansion;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.electrical.check.current.CurrentRules;
import org.loomwright.core.electrical.network.LinearSolver;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.StandardScenarios;
import org.loomwright.core.quantity.Current;

/**
 * The tables and rules that kits work with.
 *
 * @param catalogue what looms refer to
 * @param tables resistances, fuses and bundle factors
 * @param behaviours what devices do
 * @param scenarios the states in which a loom is looked at
 * @param solver for the currents of those states
 * @param rules how much voltage may be lost, how full a fuse may be, when a wire counts as loaded
 * @param colours the colour code
 * @param terminals what the ends of wires get
 * @param settings the kits' own rules
 */
public record KitBench(
        Catalogue catalogue,
        ElectricalTables tables,
        Behaviours behaviours,
        StandardScenarios scenarios,
        LinearSolver solver,
        CurrentRules rules,
        ColourCode colours,
        UsualTerminals terminals,
        KitSettings settings) {

    /** The least continuous current of a fuse for that load. */
    Current fuseFor(Current load) {
        return Current.roundedFromAmperes(
                load.toDoubleAmperes() / rules.fuseLoad().value().toDouble());
    }
}
