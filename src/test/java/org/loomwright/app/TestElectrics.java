package org.loomwright.app;

import org.loomwright.core.electrical.charging.ChargingSettings;
import org.loomwright.core.electrical.fault.FaultSettings;
import org.loomwright.core.electrical.report.ElectricalBasis;
import org.loomwright.core.electrical.structure.StructureSettings;
import org.loomwright.exchange.ColourFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.ExpectationFiles;
import org.loomwright.exchange.PeriodFiles;
import org.loomwright.exchange.TradeTables;
import org.loomwright.solver.SparseCholesky;

import java.util.List;

/** The electrical side with the project's own tables, for tests that start no server. */
public final class TestElectrics {

    private static final TradeTables TABLES = TradeTables.load(List.of());

    private static final Electrics ELECTRICS =
            new Electrics(
                    new ElectricalBasis(
                            TABLES.catalogue(),
                            TABLES.electrical(),
                            TABLES.rules(),
                            ElectricalFiles.behaviours(),
                            ElectricalFiles.scenarios(),
                            TABLES.settings(),
                            ChargingSettings.USUAL,
                            StructureSettings.USUAL,
                            FaultSettings.USUAL,
                            new SparseCholesky()),
                    ColourFiles.load(TABLES.catalogue()),
                    ExpectationFiles.load(TABLES.catalogue()),
                    PeriodFiles.load(TABLES.catalogue()),
                    new Tables(TABLES));

    private TestElectrics() {}

    /** @return the use cases */
    public static Electrics get() {
        return ELECTRICS;
    }
}
