package org.loomwright.config;

import org.loomwright.app.IdSource;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.electrical.charging.ChargingSettings;
import org.loomwright.core.electrical.fault.FaultSettings;
import org.loomwright.core.electrical.report.ElectricalBasis;
import org.loomwright.core.electrical.structure.StructureSettings;
import org.loomwright.core.kit.Kits;
import org.loomwright.core.kit.expansion.KitBench;
import org.loomwright.core.kit.expansion.KitSettings;
import org.loomwright.core.open.Expectations;
import org.loomwright.core.period.PeriodTables;
import org.loomwright.exchange.ColourFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.ExpectationFiles;
import org.loomwright.exchange.KitFiles;
import org.loomwright.exchange.PeriodFiles;
import org.loomwright.exchange.TradeTables;
import org.loomwright.solver.SparseCholesky;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import java.time.Clock;
import java.util.List;
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
    TradeTables tradeTables() {
        return TradeTables.load(List.of());
    }

    @Bean
    Catalogue catalogue(TradeTables tables) {
        return tables.catalogue();
    }

    @Bean
    ElectricalTables electricalTables(TradeTables tables) {
        return tables.electrical();
    }

    @Bean
    ElectricalBasis electricalBasis(TradeTables tables) {
        return new ElectricalBasis(
                tables.catalogue(),
                tables.electrical(),
                tables.rules(),
                ElectricalFiles.behaviours(),
                ElectricalFiles.scenarios(),
                tables.settings(),
                ChargingSettings.USUAL,
                StructureSettings.USUAL,
                FaultSettings.USUAL,
                new SparseCholesky());
    }

    @Bean
    Expectations expectations(Catalogue catalogue) {
        return ExpectationFiles.load(catalogue);
    }

    @Bean
    Kits kits(Catalogue catalogue) {
        return KitFiles.load(catalogue);
    }

    @Bean
    KitBench kitBench(ElectricalBasis basis, ColourCode code) {
        return new KitBench(
                basis.catalogue(),
                basis.tables(),
                basis.behaviours(),
                basis.scenarios(),
                basis.solver(),
                basis.rules(),
                code,
                KitFiles.terminals(),
                KitSettings.USUAL);
    }

    @Bean
    PeriodTables periodTables(Catalogue catalogue) {
        return PeriodFiles.load(catalogue);
    }

    @Bean
    ColourCode colourCode(Catalogue catalogue) {
        return ColourFiles.load(catalogue);
    }

    @Bean
    BundlePacker bundlePacker() {
        return new BundlePacker(REMEMBERED_BUNDLES);
    }
}
