package org.loomwright.core.bundle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.routing.Routes;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.List;

class SegmentBundlesTest {

    /** Outside diameter of the wires of the sketch, whatever the table says. */
    private static final Length WIRE = TestCatalogue.get().getSize("14/0.30").outsideDiameter();

    /** Two wires of 14/0.30 through S1; none beyond on S2. */
    private static LoomSketch pair() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 600)
                .segment("S2", "N2", "N3", 400)
                .device("SWITCH", DeviceKind.SWITCH, "N1")
                .device("LAMP", DeviceKind.LAMP, "N2")
                .wire("W1", "GN", "SWITCH/1", "LAMP/1")
                .wire("W2", "B", "SWITCH/1", "LAMP/1");
    }

    private static SegmentBundles bundles(Loom loom, LayFactor factor) {
        return SegmentBundles.of(
                loom,
                new Routes(loom),
                TestCatalogue.get(),
                new BundlePacker(10),
                Effort.NORMAL,
                factor);
    }

    @Test
    void theThreeDiametersFollowFromOneAnother() {
        SegmentBundle bundle = bundles(pair().loom(), LayFactor.PUBLISHED).get("S1");

        assertThat(bundle.counts().byColour()).containsOnlyKeys("B", "GN");
        assertThat(bundle.counts().bySize()).containsEntry("14/0.30", 2);
        assertThat(bundle.tight()).isEqualTo(WIRE.times(2));
        assertThat(bundle.laid()).isEqualTo(bundle.tight());
        assertThat(bundle.covered())
                .isEqualTo(bundle.laid().plus(bundle.covering().wall().times(2)));
        assertThat(bundle.howFound()).contains("2 circles", "smallest possible");
    }

    @Test
    void fromSevenWiresOnTheLayFactorCounts() {
        LoomSketch sketch = pair();
        for (int i = 3; i <= 7; i++) {
            sketch.wire("W" + i, "R", "SWITCH/1", "LAMP/1");
        }
        LayFactor tenPerCent = new LayFactor(new Ratio(1_100_000));
        SegmentBundle bundle = bundles(sketch.loom(), tenPerCent).get("S1");

        assertThat(bundle.laid().micrometres())
                .isEqualTo(Math.ceilDiv(bundle.tight().micrometres() * 11, 10));
    }

    @Test
    void aSegmentWithoutWiresHasNothingToCover() {
        SegmentBundle bundle = bundles(pair().loom(), LayFactor.PUBLISHED).get("S2");
        assertThat(bundle.counts()).isEqualTo(WireCounts.NONE);
        assertThat(bundle.covered()).isEqualTo(Length.ZERO);
    }

    @Test
    void anUnknownSegmentIsNamed() {
        SegmentBundles bundles = bundles(pair().loom(), LayFactor.PUBLISHED);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bundles.get("S9"))
                .withMessageContaining("S9");
    }

    @Test
    void anOpeningPassesUpToItsClearDiameterAndNoFurther() {
        Length covered = bundles(pair().loom(), LayFactor.PUBLISHED).get("S1").covered();

        assertThat(findings(covered)).isEmpty();
        assertThat(findings(covered.minus(Length.ofMicrometres(1))))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("opening.too-small");
                            assertThat(finding.subject().id()).isEqualTo("O1");
                            assertThat(finding.text())
                                    .contains("S1", "O1", covered.toString(), "8 mm");
                        });
    }

    private static List<Finding> findings(Length clear) {
        Opening opening =
                new Opening(
                        "O1",
                        "scuttle grommet",
                        OpeningKind.GROMMET,
                        Length.ofMillimetres(100),
                        clear,
                        Opening.PassDirection.EITHER);
        Loom loom = pair().opening("S1", opening).loom();
        return new OpeningChecks(TestCatalogue.get()).findings(bundles(loom, LayFactor.PUBLISHED));
    }

    @Test
    void everyWireOfTheBundleHasItsPlaceInTheCrossSection() {
        SegmentBundle bundle = bundles(pair().loom(), LayFactor.PUBLISHED).get("S1");
        BundleView view = BundleView.of(bundle, TestCatalogue.get());

        assertThat(view.wires())
                .extracting(wire -> wire.wireClass().colour().letters())
                .containsExactly("B", "GN");
        assertThat(view.wires())
                .extracting(BundleView.PlacedWire::circle)
                .doesNotHaveDuplicates()
                .allSatisfy(
                        circle ->
                                assertThat(circle.radiusMm())
                                        .isEqualTo(WIRE.toDoubleMillimetres() / 2));
    }
}
