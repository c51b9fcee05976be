package org.loomwright.core.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.core.open.Opened.device;
import static org.loomwright.testing.LoomSketch.mm;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.BreakOutBranch;
import org.loomwright.core.amendment.Amendment.ChangeCovering;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Opening.PassDirection;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.testing.LoomSketch;

import java.util.List;

/** What is asked about the record, the ends and the coverings. */
class OpenRecordTest {

    private static final Finish ASSUMED = finish(12, 2, EvidenceKind.ASSUMED, "");

    private static Finish finish(
            @Nullable Integer picks, int coats, EvidenceKind kind, String note) {
        return new Finish("cotton-braid", "B", List.of(), picks, coats, new Evidence(kind, note));
    }

    private static LoomSketch sketch() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 1000)
                .segment("S2", "N2", "N3", 300)
                .device(device("A", "joint", DeviceKind.JOINT, "N1", "JOINT"))
                .device(device("B", "joint", DeviceKind.JOINT, "N2", "JOINT"))
                .device(device("C", "joint", DeviceKind.JOINT, "N3", "JOINT"))
                .wire("W1", "B", "A/JOINT", "B/JOINT");
    }

    private static Opened withFinish(Finish finish) {
        return Opened.of(sketch().with("S1", segment -> segment.withFinish(finish)));
    }

    @Test
    void aLoomThatSaysEverythingButWhatIsNotStandardIsAskedJustThat() {
        OpenReport report = Opened.of(sketch()).report();
        assertThat(report.points())
                .extracting(OpenPoint::code)
                .containsExactly("open.not-standard");
        assertThat(report.next()).hasValueSatisfying(it -> assertThat(it.weight()).isEqualTo(3));
    }

    /** Two woven segments ask for picks and lacquer (2 and 2) and evidence (4), one wire for its condition (2), the vehicle for 3. */
    @Test
    void theScoreIsTheShareOfTheWeightThatIsSaid() {
        OpenReport report = Opened.of(sketch()).report();
        assertThat(report.total()).isEqualTo(new OpenReport.Score(18, 21));
        assertThat(report.total().percent()).isEqualTo(85);
        assertThat(report.price()).isEqualTo(report.build());
    }

    @Test
    void aLoomWithoutAnythingIsAskedAboutItsVehicleOnly() {
        OpenReport report =
                Opened.of(
                                new LoomSketch("N1")
                                        .segment("S1", "N1", "N2", 1)
                                        .with(
                                                "S1",
                                                it ->
                                                        it.withFinish(
                                                                new Finish(
                                                                        "none",
                                                                        null,
                                                                        List.of(),
                                                                        null,
                                                                        0,
                                                                        new Evidence(
                                                                                EvidenceKind
                                                                                        .MEASURED,
                                                                                "")))))
                        .report();
        assertThat(report.total()).isEqualTo(new OpenReport.Score(4, 7));
        assertThat(new OpenReport.Score(0, 0).percent()).isEqualTo(100);
    }

    @Test
    void anAssumedFinishIsAskedAboutOnceHoweverOftenItsSegmentIsCut() {
        Opened cut =
                withFinish(ASSUMED)
                        .amend(
                                new BreakOutBranch(
                                        "X",
                                        "",
                                        "S1",
                                        mm(400),
                                        new Node("N9", "breakout"),
                                        "S9",
                                        LoomSketch.plainSegment("S8", "N9", "N8", 100)
                                                .withFinish(ASSUMED),
                                        new Node("N8", "end")));
        assertThat(cut.open("S1")).containsExactly("finish");
        assertThat(cut.open("S9")).isEmpty();
        assertThat(cut.open("S8")).as("a wish needs no evidence").isEmpty();
    }

    @Test
    void anAssumedFinishThatIsReplacedIsNotAskedAbout() {
        Finish wanted = finish(11, 2, EvidenceKind.ASSUMED, "to match");
        assertThat(withFinish(ASSUMED).amend(new ChangeCovering("X", "", "S1", wanted)).open("S1"))
                .isEmpty();
    }

    @Test
    void picksAndLacquerAreAskedOfWovenCoversOnly() {
        assertThat(withFinish(finish(null, 0, EvidenceKind.MEASURED, "")).open("S1"))
                .containsExactly("lacquer", "picks");
        assertThat(withFinish(finish(12, 0, EvidenceKind.MEASURED, "left plain")).open("S1"))
                .isEmpty();
        Finish tube =
                new Finish(
                        "pvc-tube",
                        null,
                        List.of(),
                        null,
                        0,
                        new Evidence(EvidenceKind.MEASURED, ""));
        assertThat(withFinish(tube).open("S1")).isEmpty();
    }

    @Test
    void aSecondReadingIsAskedForOnlyWhereOthersWereReadAgain() {
        assertThat(Opened.of(sketch()).open("S2")).isEmpty();
        assertThat(Opened.of(sketch().readings("S2", 300)).open("S1")).isEmpty();
        Opened again = Opened.of(sketch().readings("S2", 300, 301));
        assertThat(again.open("S1")).containsExactly("readings");
        assertThat(again.open("S2")).isEmpty();
    }

    @Test
    void aWireAtWhichNobodyLookedIsAskedAbout() {
        assertThat(Opened.of(sketch().wire(wire("W2", Condition.UNKNOWN, null))).open("W2"))
                .containsExactly("condition");
        assertThat(
                        Opened.of(sketch())
                                .amend(new AddWire("X", "", wire("W2", Condition.UNKNOWN, null)))
                                .open("W2"))
                .isEmpty();
    }

    private static Wire wire(String id, Condition condition, @Nullable Fitting fitted) {
        return new Wire(
                id,
                "circuit",
                WireColour.parse("B"),
                "14/0.30",
                new WireEnd("B", "JOINT", "bullet-4.7", fitted),
                new WireEnd("C", "JOINT", "bullet-4.7", fitted),
                condition);
    }

    @Test
    void endsAreAskedAboutOnLegsThatAreCoveredAnewOnly() {
        Opened stock = Opened.of(sketch());
        assertThat(stock.open("N3")).isEmpty();
        Opened added = stock.amend(new AddWire("X", "", wire("W2", Condition.NEW, null)));
        assertThat(added.open("N3")).containsExactly("fitted");
        assertThat(added.open("N2")).as("S1 stays as it is").isEmpty();
        assertThat(
                        Opened.of(sketch())
                                .amend(
                                        new AddWire(
                                                "X", "", wire("W2", Condition.NEW, Fitting.EITHER)))
                                .open("N3"))
                .isEmpty();
    }

    @Test
    void aWireThatIsTakenOutUncoversItsLegToo() {
        Opened car =
                Opened.of(sketch().wire("W2", "B", "A/JOINT", "B/JOINT"))
                        .amend(new RemoveWire("X", "", "W2"));
        assertThat(car.open("N2")).containsExactly("fitted");
        assertThat(car.open("N1")).containsExactly("fitted");
    }

    @Test
    void aBareEndIsNotAskedAbout() {
        Wire bare =
                new Wire(
                        "W2",
                        "circuit",
                        WireColour.parse("B"),
                        "14/0.30",
                        LoomSketch.end("B/JOINT"),
                        LoomSketch.end("C/JOINT", "screw-end"),
                        Condition.NEW);
        assertThat(Opened.of(sketch()).amend(new AddWire("X", "", bare)).open("N3")).isEmpty();
    }

    @Test
    void anOpeningIsAskedAboutWhenAWideTerminalMayGoEitherWay() {
        assertThat(opening(PassDirection.EITHER, 20, "ring-8")).containsExactly("passes");
        assertThat(opening(PassDirection.EITHER, 40, "ring-8")).isEmpty();
        assertThat(opening(PassDirection.EITHER, 20, "bullet-4.7")).isEmpty();
        assertThat(opening(PassDirection.AWAY_FROM_DATUM, 20, "ring-8")).isEmpty();
        assertThat(opening(PassDirection.OPENS, 20, "ring-8")).isEmpty();
    }

    private static List<String> opening(PassDirection passes, long clearMm, String terminal) {
        Wire wide =
                new Wire(
                        "W2",
                        "circuit",
                        WireColour.parse("B"),
                        "14/0.30",
                        LoomSketch.end("A/JOINT", terminal),
                        LoomSketch.end("B/JOINT"),
                        Condition.GOOD);
        Opening opening = new Opening("O1", "hole", OpeningKind.HOLE, mm(500), mm(clearMm), passes);
        return Opened.of(sketch().wire(wide).opening("S1", opening)).open("O1");
    }
}
