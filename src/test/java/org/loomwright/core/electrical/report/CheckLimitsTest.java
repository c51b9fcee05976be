package org.loomwright.core.electrical.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.BundleFactor;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.electrical.charging.ChargingSettings;
import org.loomwright.core.electrical.fault.FaultSettings;
import org.loomwright.core.electrical.structure.StructureSettings;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.TradeTables;
import org.loomwright.solver.SparseCholesky;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

class CheckLimitsTest {

    private static final TradeTables TABLES = TradeTables.load(List.of());

    private static ElectricalBasis basis(ChargingSettings charging, StructureSettings structure) {
        return new ElectricalBasis(
                TABLES.catalogue(),
                TABLES.electrical(),
                TABLES.rules(),
                ElectricalFiles.behaviours(),
                ElectricalFiles.scenarios(),
                TABLES.settings(),
                charging,
                structure,
                FaultSettings.USUAL,
                new SparseCholesky());
    }

    private static List<CheckLimit> usual() {
        return CheckLimits.of(basis(ChargingSettings.USUAL, StructureSettings.USUAL));
    }

    @Test
    void everyKindOfCircuitHasItsLimitOfDropAndItsAim() {
        for (CircuitKind kind : CircuitKind.values()) {
            String name = kind.name().toLowerCase(Locale.ROOT);
            assertThat(usual())
                    .filteredOn(one -> one.check().contains(name))
                    .filteredOn(one -> one.check().startsWith("Voltage lost"))
                    .hasSize(2);
        }
    }

    @Test
    void everyBundleFactorIsListedWithItsSource() {
        for (BundleFactor factor : TABLES.electrical().bundleFactors()) {
            assertThat(usual())
                    .filteredOn(one -> one.provenance().equals(factor.provenance()))
                    .extracting(CheckLimit::limit)
                    .anyMatch(limit -> limit.contains(" " + factor.fromLoadedWires() + " loaded"));
        }
    }

    @Test
    void figuresAreThoseThatTheChecksAreGiven() {
        Provenance note = new Provenance(Status.WORKSHOP, "measured in March");
        ChargingSettings charging =
                new ChargingSettings(
                        72, new Ratio(400_000), Map.of("horns", new Ratio(30_000)), 3, note);
        StructureSettings structure =
                new StructureSettings(3, note, Set.of("wiper", "radio"), Set.of(), note);

        assertThat(CheckLimits.of(basis(charging, structure)))
                .filteredOn(one -> one.provenance().equals(note))
                .extracting(CheckLimit::limit)
                .containsExactly(
                        "72 Ah",
                        "when 40 % of it are taken",
                        "in less than 3 h",
                        "3 %",
                        "at most 3",
                        "radio, wiper",
                        "none");
    }

    @Test
    void whatIsFromMemoryIsToldFromWhatWasPublished() {
        assertThat(usual())
                .extracting(one -> one.provenance().status())
                .contains(Status.MEMORY, Status.FOUND, Status.COMPUTED);
        assertThat(usual())
                .filteredOn(one -> one.check().equals("Load of a fuse"))
                .extracting(one -> one.provenance().status())
                .containsExactly(Status.MEMORY);
    }
}
