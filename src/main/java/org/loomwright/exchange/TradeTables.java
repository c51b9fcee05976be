package org.loomwright.exchange;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.check.current.CurrentRules;
import org.loomwright.core.electrical.simulation.ElectricalSettings;

import java.util.List;

/**
 * The trade's tables that belong together: as they are printed, or with a workshop's own figures in the place of some.
 *
 * @param catalogue what documents refer to
 * @param electrical what is said about current
 * @param rules the limits of the checks of currents
 * @param settings what no document says and a simulation needs
 */
public record TradeTables(
        Catalogue catalogue,
        ElectricalTables electrical,
        CurrentRules rules,
        ElectricalSettings settings) {

    /**
     * @param overrides own figures that were found to be allowed when they were read
     * @return the tables with them
     * @throws IllegalStateException if a file is missing or a row is wrong, naming file and row
     * @throws IllegalArgumentException if two tables contradict each other
     */
    public static TradeTables load(List<CatalogueOverride> overrides) {
        TableSource source = new OverriddenTables(overrides);
        Catalogue catalogue = CatalogueFiles.load(source);
        return new TradeTables(
                catalogue,
                ElectricalFiles.load(source, catalogue),
                CurrentRuleFiles.load(source),
                ElectricalFiles.settings(source));
    }
}
