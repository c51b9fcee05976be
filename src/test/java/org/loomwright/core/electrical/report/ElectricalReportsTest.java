package org.loomwright.core.electrical.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.electrical.charging.ChargingSettings;
import org.loomwright.core.electrical.fault.FaultSettings;
import org.loomwright.core.electrical.fault.FuseLosses;
import org.loomwright.core.electrical.fault.ShortCircuits;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.ShortedNet;
import org.loomwright.core.electrical.structure.StructureSettings;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.TradeTables;
import org.loomwright.solver.SparseCholesky;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.VehicleLooms;

import java.util.List;
import java.util.stream.Stream;

/** What the report says at one go, beside what each part says when it is asked by itself. */
class ElectricalReportsTest {

    private static final ElectricalBasis BASIS = basis(TradeTables.load(List.of()));

    private static ElectricalBasis basis(TradeTables tables) {
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

    static Stream<Loom> looms() {
        return Stream.of(DemoLooms.main(), DemoLooms.amended().loom(), VehicleLooms.of(5, 120, 4));
    }

    private static ElectricalReport report(Loom loom) {
        return new ElectricalReports(BASIS).of(DemoLooms.main(), loom, Changes.LEFT_OUT);
    }

    private static IllegalStateException refusal(List<Finding> reasons) {
        return new IllegalStateException("refused: " + reasons);
    }

    @ParameterizedTest
    @MethodSource("looms")
    void shortsAreThoseOfALoomThatIsSimulatedForThemAlone(Loom loom) {
        List<ShortedNet> nets =
                BASIS.scenarios().of(loom, BASIS.catalogue()).stream()
                        .map(it -> BASIS.simulation(loom).shorted(it))
                        .map(it -> it.orElseThrow(ElectricalReportsTest::refusal))
                        .toList();
        ShortCircuits shorts =
                new ShortCircuits(
                        loom,
                        BASIS.catalogue(),
                        BASIS.tables(),
                        BASIS.behaviours(),
                        BASIS.faults());
        ElectricalReport report = report(loom);
        assertThat(report.shorts()).isNotEmpty().isEqualTo(shorts.worst(nets));
        assertThat(report.losses()).isEqualTo(new FuseLosses(loom, BASIS.behaviours()).all());
    }

    @ParameterizedTest
    @MethodSource("looms")
    void everyWireHasTheMostThatItCarriesInAnyScenario(Loom loom) {
        List<Readings> readings =
                BASIS.scenarios().of(loom, BASIS.catalogue()).stream()
                        .map(it -> BASIS.simulation(loom).run(it))
                        .map(it -> it.orElseThrow(ElectricalReportsTest::refusal))
                        .toList();
        assertThat(report(loom).wires())
                .hasSameSizeAs(loom.wires().values())
                .allSatisfy(
                        wire ->
                                assertThat(wire.current().milliamperes())
                                        .isEqualTo(most(wire.wire(), readings)));
    }

    private static long most(String wire, List<Readings> readings) {
        return readings.stream()
                .mapToLong(it -> Math.abs(it.getWire(wire).current().milliamperes()))
                .max()
                .orElseThrow();
    }
}
