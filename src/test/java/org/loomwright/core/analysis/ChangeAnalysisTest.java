package org.loomwright.core.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.Map;

class ChangeAnalysisTest {

    private static final BundlePacker PACKER = new BundlePacker(100);

    private static final Length WIRE = TestCatalogue.get().getSize("14/0.30").outsideDiameter();

    /** What the braid adds to a diameter. */
    private static final Length BRAID =
            TestCatalogue.get().getCovering("cotton-braid").wall().times(2);

    private static final Length ONE_WIRE = WIRE.plus(BRAID);
    private static final Length TWO_WIRES = WIRE.times(2).plus(BRAID);
    private static final Length A_LITTLE = Length.ofMicrometres(1);

    private static LoomSketch withOpening(Length clear) {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 600)
                .device("SWITCH", DeviceKind.SWITCH, "N1")
                .device("LAMP", DeviceKind.LAMP, "N2")
                .wire("W1", "GN", "SWITCH/1", "LAMP/1")
                .opening(
                        "S1",
                        new Opening(
                                "O1",
                                "scuttle grommet",
                                OpeningKind.GROMMET,
                                Length.ofMillimetres(100),
                                clear,
                                Opening.PassDirection.EITHER));
    }

    private static ChangeAnalysis compare(Loom before, Loom after, Map<String, String> recorded) {
        return ChangeAnalysis.of(analyse(before), analyse(after), recorded, TestCatalogue.get());
    }

    private static LoomAnalysis analyse(Loom loom) {
        return LoomAnalysis.of(loom, AnalysisSettings.USUAL, TestCatalogue.get(), PACKER);
    }

    private static ChangeAnalysis addOneWire(Length clear) {
        return compare(
                withOpening(clear).loom(),
                withOpening(clear).wire("W2", "B", "SWITCH/1", "LAMP/1").loom(),
                Map.of("S1", "S1"));
    }

    @Test
    void whatIsAddedAndHowMuchThickerItGetsIsTold() {
        SegmentChange change = addOneWire(TWO_WIRES).segments().getFirst();

        assertThat(change.isChanged()).isTrue();
        assertThat(change.added().byColour()).containsExactlyEntriesOf(Map.of("B", 1));
        assertThat(change.removed().total()).isZero();
        assertThat(change.growth()).isEqualTo(WIRE);
    }

    @Test
    void anOpeningThatPassedBeforeAndDoesNotAnyMoreIsAFault() {
        assertThat(addOneWire(TWO_WIRES.minus(A_LITTLE)).findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("opening.no-longer-passes");
                            assertThat(finding.severity()).isEqualTo(Severity.FAULT);
                            assertThat(finding.text())
                                    .contains(
                                            "no longer passes", "before the additions " + ONE_WIRE);
                        });
    }

    @Test
    void anOpeningThatWasTooSmallAlreadyIsAWarning() {
        assertThat(addOneWire(ONE_WIRE.minus(A_LITTLE)).findings())
                .extracting(Finding::code)
                .containsExactly("opening.too-small");
    }

    @Test
    void anOpeningThatStillPassesIsNoFinding() {
        assertThat(addOneWire(TWO_WIRES).findings()).isEmpty();
    }

    @Test
    void aNewSegmentHasNoBefore() {
        Loom after =
                withOpening(TWO_WIRES)
                        .segment("S2", "N2", "N3", 300)
                        .device("FOG", DeviceKind.LAMP, "N3")
                        .wire("W2", "B", "SWITCH/1", "FOG/1")
                        .loom();
        ChangeAnalysis change = compare(withOpening(TWO_WIRES).loom(), after, Map.of("S1", "S1"));

        SegmentChange added = change.segments().getLast();
        assertThat(added.segment()).isEqualTo("S2");
        assertThat(added.before()).isNull();
        assertThat(added.added().total()).isEqualTo(1);
        assertThat(added.growth()).isEqualTo(added.after().covered());
    }

    @Test
    void aNewOpeningIsNotSaidToHavePassedBefore() {
        Loom stock = withOpening(TWO_WIRES).loom();
        Opening late =
                new Opening(
                        "O2",
                        "late grommet",
                        OpeningKind.GROMMET,
                        Length.ofMillimetres(200),
                        TWO_WIRES.minus(A_LITTLE),
                        Opening.PassDirection.EITHER);
        Loom after =
                withOpening(TWO_WIRES)
                        .opening("S1", late)
                        .wire("W2", "B", "SWITCH/1", "LAMP/1")
                        .loom();
        assertThat(compare(stock, after, Map.of("S1", "S1")).findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("opening.new-too-small");
                            assertThat(finding.severity()).isEqualTo(Severity.FAULT);
                            assertThat(finding.text()).doesNotContain("before the additions");
                        });
    }

    @Test
    void aSegmentThatIsGoneIsStillTold() {
        Loom stock = withOpening(TWO_WIRES).segment("S2", "N2", "N3", 300).loom();
        ChangeAnalysis change = compare(stock, withOpening(TWO_WIRES).loom(), Map.of("S1", "S1"));
        assertThat(change.gone()).extracting(bundle -> bundle.segment().id()).containsExactly("S2");
    }
}
