package org.loomwright.testing;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.exchange.CatalogueFiles;
import org.loomwright.exchange.ElectricalFiles;

/** The project's own catalogue, read once from the CSV files. */
public final class TestCatalogue {

    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    private static final ElectricalTables ELECTRICAL = ElectricalFiles.load(CATALOGUE);

    private TestCatalogue() {}

    /** @return the tables about current */
    public static ElectricalTables electrical() {
        return ELECTRICAL;
    }

    /** @return the catalogue */
    public static Catalogue get() {
        return CATALOGUE;
    }
}
