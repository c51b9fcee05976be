package org.loomwright.config;

import org.loomwright.app.ElectricalParts;
import org.loomwright.app.IdSource;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.exchange.CatalogueFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.ExpectationFiles;
import org.loomwright.solver.SparseCholesky;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import java.time.Clock;
import java.util.UUID;

/** What the use cases take from the world: the clock, new ids, the trade's tables and the one bundle packer. */
@Configuration(proxyBeanMethods = false)
class CoreConfiguration {

    /** A remembered bundle takes a few kilobytes; a vehicle has some dozens of different ones. */
    private static final int REMEMBERED_BUNDLES = 10_000;

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    @Bean
    IdSource idSource() {
        return UUID::randomUUID;
    }

    @Bean
    Catalogue catalogue() {
        return CatalogueFiles.load();
    }

    @Bean
    ElectricalTables electricalTables(Catalogue catalogue) {
        return ElectricalFiles.load(catalogue);
    }

    @Bean
    ElectricalParts electricalParts(Catalogue catalogue, ElectricalTables tables) {
        return new ElectricalParts(
                catalogue,
                tables,
                ElectricalFiles.behaviours(),
                ElectricalFiles.scenarios(),
                ExpectationFiles.load(catalogue),
                ElectricalSettings.USUAL,
                new SparseCholesky());
    }

    @Bean
    BundlePacker bundlePacker() {
        return new BundlePacker(REMEMBERED_BUNDLES);
    }
}
