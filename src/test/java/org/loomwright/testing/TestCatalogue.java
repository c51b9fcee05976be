package org.loomwright.testing;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.exchange.CatalogueFiles;

/** The project's own catalogue, read once from the CSV files. */
public final class TestCatalogue {

    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    private TestCatalogue() {}

    /** @return the catalogue */
    public static Catalogue get() {
        return CATALOGUE;
    }
}
