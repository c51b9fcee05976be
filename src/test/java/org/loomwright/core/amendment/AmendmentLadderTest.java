package org.loomwright.core.amendment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.loomwright.core.amendment.Amending.accept;
import static org.loomwright.core.amendment.Amending.breakOut;
import static org.loomwright.testing.LoomSketch.end;
import static org.loomwright.testing.LoomSketch.grommet;
import static org.loomwright.testing.LoomSketch.mm;
import static org.loomwright.testing.LoomSketch.plainDevice;
import static org.loomwright.testing.LoomSketch.plainSegment;
import static org.loomwright.testing.LoomSketch.plainWire;
import static org.loomwright.testing.TestLooms.segment;
import static org.loomwright.testing.TestLooms.wire;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.AmendedLoom.Piece;
import org.loomwright.core.amendment.AmendedLoom.TakenOut;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddOpening;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.ChangeCovering;
import org.loomwright.core.amendment.Amendment.ChangeLength;
import org.loomwright.core.amendment.Amendment.ChangeTerminal;
import org.loomwright.core.amendment.Amendment.ExtendBranch;
import org.loomwright.core.amendment.Amendment.MoveWireEnd;
import org.loomwright.core.amendment.Amendment.RemoveBranch;
import org.loomwright.core.amendment.Amendment.RemoveDevice;
import org.loomwright.core.amendment.Amendment.RemoveOpening;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.amendment.Amendment.ReplaceWire;
import org.loomwright.core.amendment.Origin.Act;
import org.loomwright.core.amendment.Origin.ByAmendment;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.TestLooms;

import java.util.List;

/** From the simplest amendment to the hardest, all on the front loom of {@link TestLooms#frontSketch}. */
class AmendmentLadderTest {

    private static final Finish TAPE =
            new Finish(
                    "cloth-tape", null, List.of(), null, 0, new Evidence(EvidenceKind.ASSUMED, ""));

    private final Loom stock = TestLooms.front();

    @Test
    void a01NoAmendmentGivesTheStockLoomAndEverythingIsStock() {
        AmendedLoom amended = accept(stock);

        assertThat(amended.loom()).isEqualTo(stock);
        assertThat(amended.origins()).isEmpty();
        assertThat(amended.origin(ThingKind.WIRE, "W1")).isEqualTo(Origin.STOCK);
        assertThat(amended.piece("S2")).isEqualTo(new Piece(segment(stock, "S2"), Length.ZERO));
    }

    @Test
    void a02AnAddedWireIsThereAndSaysWhoAddedIt() {
        Wire wire = plainWire("W9", "G", "F1/2", "L1/1");

        AmendedLoom amended = accept(stock, new AddWire("A1", "", wire));

        assertThat(amended.loom().wires()).hasSize(6).containsEntry("W9", wire);
        assertThat(amended.origin(ThingKind.WIRE, "W9"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A1")));
    }

    @Test
    void a03ARemovedWireIsGoneAndListedAsTakenOut() {
        AmendedLoom amended = accept(stock, new RemoveWire("A1", "", "W5"));

        assertThat(amended.loom().wires()).doesNotContainKey("W5");
        assertThat(amended.takenOut())
                .containsExactly(new TakenOut(Subject.of(ThingKind.WIRE, "W5"), "A1"));
    }

    @Test
    void a04AReplacedWireKeepsItsEndsAndIsNew() {
        AmendedLoom amended =
                accept(stock, new ReplaceWire("A1", "", "W3", WireColour.parse("UW"), "28/0.30"));

        Wire old = wire(stock, "W3");
        assertThat(wire(amended.loom(), "W3"))
                .isEqualTo(
                        new Wire(
                                "W3",
                                old.circuit(),
                                WireColour.parse("UW"),
                                "28/0.30",
                                old.a(),
                                old.b(),
                                Condition.NEW));
        assertThat(amended.origin(ThingKind.WIRE, "W3"))
                .isEqualTo(new ByAmendment(Act.CHANGED, List.of("A1")));
    }

    @Test
    void a05LikeForLikeReplacementIsAChange() {
        AmendedLoom amended =
                accept(stock, new ReplaceWire("A1", "", "W3", WireColour.parse("UR"), "14/0.30"));

        assertThat(wire(amended.loom(), "W3").condition()).isEqualTo(Condition.NEW);
    }

    @Test
    void a06OneEndOfAWireMovesAndTheOtherStays() {
        AmendedLoom amended =
                accept(stock, new MoveWireEnd("A1", "", "W4", Side.B, end("L1/1", "ring-5")));

        assertThat(wire(amended.loom(), "W4").b()).isEqualTo(end("L1/1", "ring-5"));
        assertThat(wire(amended.loom(), "W4").a()).isEqualTo(end("K1/2"));
    }

    @Test
    void a07OneTerminalChanges() {
        AmendedLoom amended = accept(stock, new ChangeTerminal("A1", "", "W1", Side.A, "ring-5"));

        assertThat(wire(amended.loom(), "W1").a()).isEqualTo(end("C1/1", "ring-5"));
        assertThat(wire(amended.loom(), "W1").b()).isEqualTo(end("F1/1"));
    }

    @Test
    void a08ADeviceIsAddedAndWiredInOneList() {
        AmendedLoom amended =
                accept(
                        stock,
                        new AddDevice("A1", "", plainDevice("R1", DeviceKind.RELAY, "N2", "N2")),
                        new AddWire("A2", "", plainWire("W9", "U", "R1/1", "L1/1")));

        assertThat(amended.loom().devices()).containsKey("R1");
        assertThat(amended.origin(ThingKind.POINT, "R1/2"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A1")));
    }

    @Test
    void a09ADeviceGoesOnceItsWiresAreGone() {
        AmendedLoom amended =
                accept(stock, new RemoveWire("A1", "", "W1"), new RemoveDevice("A2", "", "C1"));

        assertThat(amended.loom().devices()).doesNotContainKey("C1");
    }

    @Test
    void a10OpeningsComeAndGo() {
        AmendedLoom amended =
                accept(
                        stock,
                        new AddOpening("A1", "", "S4", grommet("O9", 100)),
                        new RemoveOpening("A2", "", "O1"));

        assertThat(segment(amended.loom(), "S4").openings()).containsExactly(grommet("O9", 100));
        assertThat(segment(amended.loom(), "S1").openings()).isEmpty();
        assertThat(amended.origin(ThingKind.OPENING, "O9"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A1")));
    }

    @Test
    void a11ACoveringChanges() {
        AmendedLoom amended = accept(stock, new ChangeCovering("A1", "", "S4", TAPE));

        assertThat(segment(amended.loom(), "S4").finish()).isEqualTo(TAPE);
        assertThat(amended.origin(ThingKind.SEGMENT, "S4"))
                .isEqualTo(new ByAmendment(Act.CHANGED, List.of("A1")));
    }

    @Test
    void a12TheLoomIsRunOnAndTheNewEndIsUsed() {
        AmendedLoom amended =
                accept(
                        stock,
                        new ExtendBranch(
                                "A1",
                                "",
                                plainSegment("S9", "N5", "N9", 250),
                                new Node("N9", "fog lamp")),
                        new AddDevice("A2", "", plainDevice("L9", DeviceKind.LAMP, "N9")),
                        new AddWire("A3", "", plainWire("W9", "R", "K1/2", "L9/1")));

        assertThat(amended.loom().findArriving("N9")).map(Segment::id).hasValue("S9");
        assertThat(amended.origin(ThingKind.NODE, "N9"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A1")));
    }

    @Test
    void a13AChangedLengthVoidsReadingsAndTheCheckAcrossIt() {
        AmendedLoom amended = accept(stock, new ChangeLength("A1", "", "S2", mm(1100)));

        assertThat(segment(amended.loom(), "S2").length()).isEqualTo(mm(1100));
        assertThat(segment(amended.loom(), "S2").readings()).isEmpty();
        assertThat(amended.piece("S2").recorded().readings()).containsExactly(mm(998), mm(1002));
        assertThat(amended.loom().document().checks()).isEmpty();
        assertThat(amended.voided()).containsExactly(entry("C1", "A1"));
    }

    @Test
    void a14AChangedLengthBesideACheckLeavesItAlone() {
        AmendedLoom amended = accept(stock, new ChangeLength("A1", "", "S4", mm(400)));

        assertThat(amended.loom().document().checks()).isEqualTo(stock.document().checks());
        assertThat(amended.voided()).isEmpty();
    }

    @Test
    void a15ABreakoutSplitsItsSegmentAndKeepsEverythingTrue() {
        AmendedLoom amended = accept(stock, breakOut("A1", "S2", 400));
        Segment near = segment(amended.loom(), "S2");
        Segment far = segment(amended.loom(), "S2-far-A1");

        assertThat(near.to()).isEqualTo("N-A1");
        assertThat(near.length()).isEqualTo(mm(400));
        assertThat(far.length()).isEqualTo(mm(600));
        assertThat(near.bendDegrees()).isEqualTo(36);
        assertThat(far.bendDegrees()).isEqualTo(54);
        assertThat(near.openings()).containsExactly(grommet("O2", 250));
        assertThat(far.openings()).extracting(Opening::position).containsExactly(mm(400));
        assertThat(near.readings()).isEmpty();
        assertThat(amended.piece("S2-far-A1")).isEqualTo(new Piece(segment(stock, "S2"), mm(400)));
        assertThat(amended.origin(ThingKind.SEGMENT, "S2-far-A1"))
                .isEqualTo(new ByAmendment(Act.CUT, List.of("A1")));
        assertThat(amended.loom().document().checks()).isEqualTo(stock.document().checks());
    }

    @Test
    void a16AnOpeningExactlyAtTheBreakoutStaysOnTheNearSide() {
        AmendedLoom amended = accept(stock, breakOut("A1", "S2", 250));

        assertThat(segment(amended.loom(), "S2").openings()).containsExactly(grommet("O2", 250));
        assertThat(segment(amended.loom(), "S2-far-A1").openings())
                .extracting(Opening::id)
                .containsExactly("O3");
    }

    @Test
    void a17PositionsCountAlongTheWholeSegmentEvenAfterASplit() {
        AmendedLoom amended =
                accept(
                        stock,
                        breakOut("A1", "S2", 400),
                        breakOut("A2", "S2", 900),
                        new AddOpening("A3", "", "S2", grommet("O9", 700)),
                        new ChangeCovering("A4", "", "S2", TAPE));

        Loom loom = amended.loom();
        assertThat(segment(loom, "S2").length()).isEqualTo(mm(400));
        assertThat(segment(loom, "S2-far-A1").length()).isEqualTo(mm(500));
        assertThat(segment(loom, "S2-far-A2").length()).isEqualTo(mm(100));
        assertThat(segment(loom, "S2-far-A1").openings())
                .containsExactly(grommet("O9", 300), grommet("O3", 400));
        assertThat(List.of("S2", "S2-far-A1", "S2-far-A2"))
                .allSatisfy(id -> assertThat(segment(loom, id).finish()).isEqualTo(TAPE));
        assertThat(amended.origin(ThingKind.SEGMENT, "S2-far-A1"))
                .isEqualTo(new ByAmendment(Act.CUT, List.of("A1", "A2", "A4")));
    }

    @Test
    void a18ABranchBrokenOutOfAnAddedBranchCountsAlongThatBranch() {
        AmendedLoom amended = accept(stock, breakOut("A1", "S2", 400), breakOut("A2", "B-A1", 50));

        Segment near = segment(amended.loom(), "B-A1");
        assertThat(near.length()).isEqualTo(mm(50));
        assertThat(segment(amended.loom(), "B-A1-far-A2").length()).isEqualTo(mm(250));
        assertThat(amended.origin(ThingKind.SEGMENT, "B-A1"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A1", "A2")));
    }

    @Test
    void a19TakingTheBranchOffAgainHealsTheSegmentWithItsReadings() {
        AmendedLoom amended =
                accept(stock, breakOut("A1", "S2", 400), new RemoveBranch("A2", "", "B-A1"));

        assertThat(amended.loom()).isEqualTo(stock);
        assertThat(amended.origins()).isEmpty();
        assertThat(amended.takenOut()).isEmpty();
    }

    @Test
    void a20ABreakoutThatSomethingElseNeedsStaysUntilThatIsGone() {
        Amendment device = new AddDevice("A2", "", plainDevice("R1", DeviceKind.RELAY, "N-A1"));
        Amendment branchOff = new RemoveBranch("A3", "", "B-A1");

        AmendedLoom held = accept(stock, breakOut("A1", "S2", 400), device, branchOff);
        AmendedLoom healed =
                accept(
                        stock,
                        breakOut("A1", "S2", 400),
                        device,
                        branchOff,
                        new RemoveDevice("A4", "", "R1"));

        assertThat(held.loom().segments()).containsKey("S2-far-A1").doesNotContainKey("B-A1");
        assertThat(healed.loom()).isEqualTo(stock);
    }

    @Test
    void a21AStockLegGoesWithItsEndItsDevicesAndItsChecks() {
        AmendedLoom amended =
                accept(
                        stock,
                        new RemoveWire("A1", "", "W4"),
                        new RemoveWire("A2", "", "W5"),
                        new RemoveDevice("A3", "", "L2"),
                        new RemoveBranch("A4", "", "S5"));

        assertThat(amended.loom().nodes()).doesNotContainKey("N6");
        assertThat(amended.voided()).containsExactly(entry("C1", "A4"));
        assertThat(amended.takenOut())
                .contains(new TakenOut(Subject.of(ThingKind.SEGMENT, "S5"), "A4"))
                .contains(new TakenOut(Subject.of(ThingKind.NODE, "N6"), "A4"));
        assertThat(amended.loom().segments()).containsKey("S2").containsKey("S4");
    }

    @Test
    void a22ChangingThereAndBackIsNoChangeAtAll() {
        AmendedLoom amended =
                accept(
                        stock,
                        new ChangeLength("A1", "", "S2", mm(1100)),
                        new ChangeTerminal("A2", "", "W1", Side.A, "ring-5"),
                        new ChangeLength("A3", "", "S2", mm(1000)),
                        new ChangeTerminal("A4", "", "W1", Side.A, "bullet-4.7"));

        assertThat(amended.loom()).isEqualTo(stock);
        assertThat(amended.origins()).isEmpty();
        assertThat(amended.voided()).isEmpty();
    }

    @Test
    void a23AWholeConversionFromBreakoutToTerminal() {
        AmendedLoom amended =
                accept(
                        stock,
                        breakOut("A1", "S2", 400),
                        new AddDevice("A2", "", plainDevice("H1", DeviceKind.HORN, "E-A1", "N-A1")),
                        new AddWire("A3", "", plainWire("W8", "P", "F1/2", "H1/1")),
                        new AddWire("A4", "", plainWire("W9", "PB", "H1/2", "K1/2")),
                        new ReplaceWire("A5", "", "W9", WireColour.parse("PY"), "28/0.30"),
                        new MoveWireEnd("A6", "", "W3", Side.B, end("H1/1")),
                        new ChangeTerminal("A7", "", "W9", Side.A, "ring-5"),
                        new RemoveWire("A8", "", "W8"));

        assertThat(amended.loom().wires()).containsOnlyKeys("W1", "W2", "W3", "W4", "W5", "W9");
        assertThat(amended.origin(ThingKind.WIRE, "W9"))
                .isEqualTo(new ByAmendment(Act.ADDED, List.of("A4", "A5", "A7")));
        assertThat(amended.loom().degree("N-A1")).isEqualTo(3);
    }
}
