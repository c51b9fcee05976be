package org.loomwright.core.electrical.report;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.colour.ColourAudit;
import org.loomwright.core.colour.ColourClash;
import org.loomwright.core.colour.ColourProposals;
import org.loomwright.core.colour.ColourReport;
import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.electrical.charging.ChargingSettings;
import org.loomwright.core.electrical.fault.FaultSettings;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Simulation;
import org.loomwright.core.electrical.simulation.StandardScenarios;
import org.loomwright.core.electrical.structure.Newcomers;
import org.loomwright.core.electrical.structure.StructureSettings;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.exchange.ColourFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.TradeTables;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.VehicleLooms;

import java.util.List;
import java.util.TreeMap;

/**
 * A loom beside the recorded one, to be measured with every check there is; the tables are read once, everything that depends on the
 * looms is made anew each time.
 *
 * @param basis the tables, with the scenarios that are measured
 * @param recorded the recorded loom
 * @param loom the loom as it is going to be
 */
record ReportCase(ElectricalBasis basis, Loom recorded, Loom loom) {

    private static final TradeTables TABLES = TradeTables.load(List.of());
    private static final ColourCode CODE = ColourFiles.load(TABLES.catalogue());

    /** {@code demo} for the demonstration with its additions in all standard scenarios, or a number of wires of a loom in the first twelve. */
    static ReportCase of(String what) {
        StandardScenarios all = ElectricalFiles.scenarios();
        if (what.equals("demo")) {
            return new ReportCase(basis(all), DemoLooms.main(), DemoLooms.amended().loom());
        }
        Loom loom = VehicleLooms.of(1, Integer.parseInt(what));
        return new ReportCase(basis(new StandardScenarios(all.rows().subList(0, 12))), loom, loom);
    }

    private static ElectricalBasis basis(StandardScenarios scenarios) {
        return new ElectricalBasis(
                TABLES.catalogue(),
                TABLES.electrical(),
                TABLES.rules(),
                ElectricalFiles.behaviours(),
                scenarios,
                TABLES.settings(),
                ChargingSettings.USUAL,
                StructureSettings.USUAL,
                FaultSettings.USUAL,
                new SparseCholesky());
    }

    ElectricalReport report(Changes changes) {
        return new ElectricalReports(basis).of(recorded, loom, changes);
    }

    ColourReport colours() {
        TracedLoom stock = traced(recorded);
        TracedLoom now = traced(loom);
        ColourProposals proposals = new ColourProposals(now, CODE);
        List<String> added =
                loom.wires().values().stream()
                        .filter(new Newcomers(recorded)::isNew)
                        .map(Wire::id)
                        .toList();
        added.forEach(proposals::of);
        return new ColourReport(
                new TreeMap<>(),
                proposals.differing(added),
                ColourClash.in(now),
                ColourAudit.of(stock, CODE));
    }

    private TracedLoom traced(Loom any) {
        Catalogue catalogue = basis.catalogue();
        return TracedLoom.of(any, basis.tracing(any), catalogue);
    }

    /** Nothing but the simulation, to compare the rest with. */
    List<Readings> simulated() {
        Simulation simulation = basis.simulation(loom);
        return basis.scenarios().of(loom, basis.catalogue()).stream()
                .map(simulation::run)
                .map(outcome -> outcome.orElseThrow(ReportCase::refusal))
                .toList();
    }

    private static IllegalStateException refusal(List<?> reasons) {
        return new IllegalStateException(reasons.toString());
    }
}
