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

    /** One wire of 2.7 mm in braid is 4.1 mm thick; two are 6.8 mm. */
    private static LoomSketch withOpening(long clearMm) {
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
                                Length.ofMillimetres(clearMm),
                                Opening.PassDirection.EITHER));
    }

    private static ChangeAnalysis compare(Loom before, Loom after, Map<String, String> recorded) {
        return ChangeAnalysis.of(analyse(before), analyse(after), recorded, TestCatalogue.get());
    }

    private static LoomAnalysis analyse(Loom loom) {
        return LoomAnalysis.of(loom, AnalysisSettings.USUAL, TestCatalogue.get(), PACKER);
    }

    private static ChangeAnalysis addOneWire(long clearMm) {
        return compare(
                withOpening(clearMm).loom(),
                withOpening(clearMm).wire("W2", "B", "SWITCH/1", "LAMP/1").loom(),
                Map.of("S1", "S1"));
    }

    @Test
    void whatIsAddedAndHowMuchThickerItGetsIsTold() {
        SegmentChange change = addOneWire(20).segments().getFirst();

        assertThat(change.isChanged()).isTrue();
        assertThat(change.added().byColour()).containsExactlyEntriesOf(Map.of("B", 1));
        assertThat(change.removed().total()).isZero();
        assertThat(change.growth()).isEqualTo(Length.ofMicrometres(2_700));
    }

    @Test
    void anOpeningThatPassedBeforeAndDoesNotAnyMoreIsAFault() {
        assertThat(addOneWire(6).findings())
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("opening.no-longer-passes");
                            assertThat(finding.severity()).isEqualTo(Severity.FAULT);
                            assertThat(finding.text())
                                    .contains("no longer passes", "before the additions 4.1 mm");
                        });
    }

    @Test
    void anOpeningThatWasTooSmallAlreadyIsAWarning() {
        assertThat(addOneWire(4).findings())
                .extracting(Finding::code)
                .containsExactly("opening.too-small");
    }

    @Test
    void anOpeningThatStillPassesIsNoFinding() {
        assertThat(addOneWire(7).findings()).isEmpty();
    }

    @Test
    void aNewSegmentHasNoBefore() {
        Loom after =
                withOpening(20)
                        .segment("S2", "N2", "N3", 300)
                        .device("FOG", DeviceKind.LAMP, "N3")
                        .wire("W2", "B", "SWITCH/1", "FOG/1")
                        .loom();
        ChangeAnalysis change = compare(withOpening(20).loom(), after, Map.of("S1", "S1"));

        SegmentChange added = change.segments().getLast();
        assertThat(added.segment()).isEqualTo("S2");
        assertThat(added.before()).isNull();
        assertThat(added.added().total()).isEqualTo(1);
        assertThat(added.growth()).isEqualTo(added.after().covered());
    }
}
