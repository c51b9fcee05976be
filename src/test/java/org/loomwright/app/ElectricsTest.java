package org.loomwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.electrical.check.current.CheckedFinding;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.DemoLooms;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.VehicleLooms;

import java.util.List;

class ElectricsTest {

    private static WiredLoom wired(Loom loom) {
        return new WiredLoom(
                loom,
                Amendments.apply(loom, List.of(), TestCatalogue.get())
                        .orElseThrow(reasons -> new IllegalStateException(reasons.toString())),
                AnalysisSettings.USUAL);
    }

    private static List<CheckedFinding> withChange(Loom loom) {
        return TestElectrics.get().report(wired(loom), Changes.SOUGHT).findings().stream()
                .filter(checked -> checked.change().isPresent())
                .toList();
    }

    @Test
    void aLoomFarLargerThanAVehiclesIsRefused() {
        WiredLoom large = wired(VehicleLooms.of(1, Electrics.MOST_WIRES + 1));

        assertThatThrownBy(() -> TestElectrics.get().report(large, Changes.LEFT_OUT))
                .isInstanceOfSatisfying(
                        TooMuchWorkException.class,
                        refused -> assertThat(refused.detail()).contains("3001", "3000"));
    }

    @Test
    void changesAreSoughtForAVehiclesLoomAndLeftOutForALargeOne() {
        assertThat(withChange(DemoLooms.main())).isNotEmpty();
        assertThat(withChange(VehicleLooms.of(1, Electrics.MOST_WIRES_FOR_CHANGES + 1))).isEmpty();
    }
}
