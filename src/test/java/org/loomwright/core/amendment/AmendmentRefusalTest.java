package org.loomwright.core.amendment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.core.amendment.Amending.breakOut;
import static org.loomwright.core.amendment.Amending.refuse;
import static org.loomwright.testing.LoomSketch.BLACK_BRAID;
import static org.loomwright.testing.LoomSketch.end;
import static org.loomwright.testing.LoomSketch.grommet;
import static org.loomwright.testing.LoomSketch.mm;
import static org.loomwright.testing.LoomSketch.plainDevice;
import static org.loomwright.testing.LoomSketch.plainSegment;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddOpening;
import org.loomwright.core.amendment.Amendment.BreakOutBranch;
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
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Side;

import java.util.List;

/** Every reason for a refusal, with its code, its place in the list and the thing that it names. */
class AmendmentRefusalTest extends AmendmentRefusals {

    @Test
    void everyReasonPointsAtItsAmendment() {
        List<Finding> reasons =
                refuse(stock, wire("A1", "W9", "F1/2", "L1/1"), new RemoveWire("A2", "", "W77"));

        assertThat(reasons)
                .extracting(Finding::subject)
                .containsExactly(new Subject(ThingKind.AMENDMENT, "A2", "/amendments/1/wire"));
    }

    @Test
    void whatDoesNotExistIsNamed() {
        reasons(
                        new RemoveWire("A1", "", "W77"),
                        new RemoveDevice("A2", "", "D77"),
                        new RemoveBranch("A3", "", "S77"),
                        new RemoveOpening("A4", "", "O77"))
                .containsExactly(
                        "amendment.wire-unknown | /amendments/0/wire | Amendment A1: wire W77 does"
                                + " not exist.",
                        "amendment.device-unknown | /amendments/1/device | Amendment A2: device D77"
                                + " does not exist.",
                        "amendment.segment-unknown | /amendments/2/segment | Amendment A3: segment"
                                + " S77 does not exist.",
                        "amendment.opening-unknown | /amendments/3/opening | Amendment A4: opening"
                                + " O77 does not exist.");
    }

    @Test
    void aWireToAnUnknownDeviceOrPointNamesBoth() {
        reasons(
                        wire("A1", "W9", "D7/2", "L1/9"),
                        new MoveWireEnd("A2", "", "W3", Side.B, end("D8/1")))
                .containsExactly(
                        "amendment.device-unknown | /amendments/0/wire/a | Amendment A1: end A of"
                                + " wire W9 is to go to D7/2, but device D7 does not exist.",
                        "amendment.point-unknown | /amendments/0/wire/b | Amendment A1: end B of"
                                + " wire W9 is to go to L1/9, but device L1 has no point 9.",
                        "amendment.device-unknown | /amendments/1/to | Amendment A2: end B of wire"
                                + " W3 is to go to D8/1, but device D8 does not exist.");
    }

    @Test
    void aMoveOfAnUnknownWireToAnUnknownDeviceNamesBoth() {
        reasons(new MoveWireEnd("A1", "", "W77", Side.B, end("D8/1")))
                .containsExactly(
                        "amendment.wire-unknown | /amendments/0/wire | Amendment A1: wire W77 does"
                                + " not exist.",
                        "amendment.device-unknown | /amendments/0/to | Amendment A1: end B of wire"
                                + " W77 is to go to D8/1, but device D8 does not exist.");
    }

    @Test
    void aDeviceOrBranchAtAnUnknownNodeNamesBoth() {
        reasons(
                        new AddDevice("A1", "", plainDevice("D9", DeviceKind.LAMP, "N77")),
                        new ExtendBranch(
                                "A2",
                                "",
                                plainSegment("S9", "N78", "N9", 100),
                                new Node("N9", "end")))
                .containsExactly(
                        "amendment.node-unknown | /amendments/0/device/points/0/node | Amendment"
                            + " A1: point D9/1 is to leave the loom at node N77, but node N77 does"
                            + " not exist.",
                        "amendment.node-unknown | /amendments/1/branch/from | Amendment A2: branch"
                                + " S9 is to run on from node N78, but node N78 does not exist.");
    }

    @Test
    void whatAnEarlierAmendmentTookOutIsToldAsSuch() {
        reasons(
                        new RemoveWire("A1", "", "W3"),
                        new ChangeTerminal("A2", "", "W3", Side.A, "ring-5"),
                        breakOut("A3", "S2", 400),
                        new RemoveBranch("A4", "", "B-A3"),
                        new AddDevice("A5", "", plainDevice("D9", DeviceKind.LAMP, "N-A3")))
                .containsExactly(
                        "amendment.taken-out | /amendments/1/wire | Amendment A2: wire W3 was taken"
                                + " out by amendment A1.",
                        "amendment.taken-out | /amendments/4/device/points/0/node | Amendment A5:"
                                + " point D9/1 is to leave the loom at node N-A3, but node N-A3 was"
                                + " taken out by amendment A4.");
    }

    @Test
    void whatDependsOnARefusedAmendmentSaysSo() {
        reasons(
                        breakOut("A1", "S2", 5000),
                        new AddDevice("A2", "", plainDevice("D9", DeviceKind.LAMP, "E-A1")),
                        wire("A3", "W9", "D9/1", "F1/2"),
                        new RemoveWire("A4", "", "W9"))
                .containsExactly(
                        "amendment.breakout-off-segment | /amendments/0/atMm | Amendment A1: a"
                            + " breakout at 5000 mm must lie between the ends of segment S2, which"
                            + " is 1000 mm long.",
                        "amendment.depends-on-refused | /amendments/1/device/points/0/node |"
                                + " Amendment A2: point D9/1 is to leave the loom at node E-A1, but"
                                + " node E-A1 depends on amendment A1, which was refused.",
                        "amendment.depends-on-refused | /amendments/2/wire/a | Amendment A3: end A"
                            + " of wire W9 is to go to D9/1, but device D9 depends on amendment A2,"
                            + " which was refused.",
                        "amendment.depends-on-refused | /amendments/3/wire | Amendment A4: wire W9"
                                + " depends on amendment A3, which was refused.");
    }

    @Test
    void whatOnlyALaterAmendmentMakesSaysSo() {
        reasons(
                        wire("A1", "W9", "D9/1", "F1/2"),
                        new AddDevice("A2", "", plainDevice("D9", DeviceKind.LAMP, "N5")))
                .containsExactly(
                        "amendment.made-later | /amendments/0/wire/a | Amendment A1: end A of wire"
                            + " W9 is to go to D9/1, but device D9 is made only by amendment A2,"
                            + " which comes later.");
    }

    @Test
    void anIdIsNotGivenTwiceNorAgain() {
        reasons(
                        wire("A1", "W1", "F1/2", "L1/1"),
                        new RemoveWire("A2", "", "W2"),
                        wire("A3", "W2", "F1/2", "L1/1"),
                        new AddOpening("A4", "", "S1", grommet("O2", 100)),
                        new BreakOutBranch(
                                "A5",
                                "",
                                "S2",
                                mm(100),
                                new Node("N9", "breakout"),
                                "S9",
                                plainSegment("S9", "N9", "N9", 100),
                                new Node("N9", "end")))
                .containsExactly(
                        "amendment.id-taken | /amendments/0/wire/id | Amendment A1: wire W1 exists"
                                + " already.",
                        "amendment.id-taken | /amendments/2/wire/id | Amendment A3: wire W2 was"
                                + " taken out by amendment A2 and its id is not given again.",
                        "amendment.id-taken | /amendments/3/opening/id | Amendment A4: opening O2"
                                + " exists already.",
                        "amendment.id-taken | /amendments/4/branch/id | Amendment A5: it makes"
                                + " segment S9 twice.",
                        "amendment.id-taken | /amendments/4/end/id | Amendment A5: it makes node N9"
                                + " twice.");
    }

    @Test
    void anAmendmentsOwnIdMustBeThereAndStandOnce() {
        reasons(
                        new RemoveWire("A1", "", "W1"),
                        new RemoveWire("A1", "", "W2"),
                        wire("", "W9", "F1/2", "L1/1"))
                .containsExactly(
                        "amendment.id-twice | /amendments/1/id | Amendment A1: an earlier amendment"
                                + " has the same id already.",
                        "amendment.id-malformed | /amendments/2/id | Amendment number 3: its id"
                                + " must have 1 to 40 characters.");
    }

    @Test
    void aReasonMayNotBeANovel() {
        reasons(new RemoveWire("A1", "x".repeat(301), "W1"))
                .containsExactly(
                        "amendment.text-length | /amendments/0/reason | Amendment A1: its reason"
                                + " must have at most 300 characters.");
    }

    @Test
    void whatChangesNothingIsRefused() {
        assertThat(
                        refuse(
                                stock,
                                new MoveWireEnd("A1", "", "W3", Side.B, end("L1/1")),
                                new ChangeTerminal("A2", "", "W3", Side.B, "bullet-4.7"),
                                new ChangeLength("A3", "", "S2", mm(1000)),
                                new ChangeCovering("A4", "", "S2", BLACK_BRAID),
                                new ReplaceWire("A5", "", "W1", WireColour.parse("N"), "14/0.30"),
                                new ReplaceWire("A6", "", "W1", WireColour.parse("N"), "14/0.30")))
                .allSatisfy(
                        finding -> {
                            assertThat(finding.code()).isEqualTo("amendment.changes-nothing");
                            assertThat(finding.text()).contains("changes nothing");
                        })
                .extracting(finding -> finding.subject().id())
                .containsExactly("A1", "A2", "A3", "A4", "A6");
    }

    @Test
    void aDeviceWithWiresStaysAndNamesThem() {
        reasons(new RemoveDevice("A1", "", "K1"))
                .containsExactly(
                        "amendment.device-in-use | /amendments/0/device | Amendment A1: device K1"
                                + " still has wires on it: W2, W3, W4.");
    }

    @Test
    void aBranchInUseStaysAndNamesWhatIsLeftOnIt() {
        reasons(
                        new RemoveBranch("A1", "", "S2"),
                        new RemoveBranch("A2", "", "S5"),
                        breakOut("A3", "S3", 100),
                        new RemoveBranch("A4", "", "S3"))
                .containsExactly(
                        "amendment.branch-in-use | /amendments/0/segment | Amendment A1: something"
                                + " is left on it: from its end, node N3, segments run on: S4, S5.",
                        "amendment.branch-in-use | /amendments/1/segment | Amendment A2: something"
                            + " is left on it: from its end, node N6, wires leave for points: L2/1,"
                            + " L2/2.",
                        "amendment.branch-in-use | /amendments/3/segment | Amendment A4: something"
                            + " is left on it: from its end, node N4, wires leave for points: C1/1,"
                            + " C1/2.",
                        "amendment.branch-in-use | /amendments/3/segment | Amendment A4: segment S3"
                            + " cannot go, because breakout N-A3 at 100 mm of it, made by amendment"
                            + " A3, is still in use.");
    }

    @Test
    void aLengthMayNotDropOpeningsNorChangeUnderABreakout() {
        reasons(
                        new ChangeLength("A1", "", "S2", mm(240)),
                        breakOut("A2", "S1", 100),
                        new ChangeLength("A3", "", "S1", mm(700)))
                .containsExactly(
                        "amendment.opening-off-segment | /amendments/0/lengthMm | Amendment A1:"
                            + " opening O2 stands at 250 mm and would fall off segment S2, made 240"
                            + " mm long.",
                        "amendment.opening-off-segment | /amendments/0/lengthMm | Amendment A1:"
                            + " opening O3 stands at 800 mm and would fall off segment S2, made 240"
                            + " mm long.",
                        "amendment.segment-split | /amendments/2/segment | Amendment A3: segment S1"
                            + " cannot change its length, because amendment A2 broke a branch out"
                            + " of it at 100 mm.");
    }

    @Test
    void aPieceIsNotASegmentToAmend() {
        reasons(breakOut("A1", "S2", 400), new AddOpening("A2", "", "S2-far-A1", grommet("O9", 9)))
                .containsExactly(
                        "amendment.segment-is-piece | /amendments/1/segment | Amendment A2: segment"
                                + " S2-far-A1 is a piece that a breakout cut from segment S2; name"
                                + " segment S2 and count along the whole of it.");
    }

    @Test
    void aBreakoutMustLieWithinAndNotOnAnother() {
        reasons(
                        breakOut("A1", "S2", 0),
                        breakOut("A2", "S2", 1000),
                        breakOut("A3", "S2", 400),
                        breakOut("A4", "S2", 400))
                .containsExactly(
                        "amendment.breakout-off-segment | /amendments/0/atMm | Amendment A1: a"
                            + " breakout at 0 mm must lie between the ends of segment S2, which is"
                            + " 1000 mm long.",
                        "amendment.breakout-off-segment | /amendments/1/atMm | Amendment A2: a"
                            + " breakout at 1000 mm must lie between the ends of segment S2, which"
                            + " is 1000 mm long.",
                        "amendment.breakout-twice | /amendments/3/atMm | Amendment A4: amendment A3"
                            + " made breakout N-A3 at 400 mm of segment S2; run a branch on from"
                            + " there.");
    }

    @Test
    void aBranchMustStartAndEndWhereItSays() {
        reasons(
                        new BreakOutBranch(
                                "A1",
                                "",
                                "S2",
                                mm(100),
                                new Node("N8", "breakout"),
                                "S8",
                                plainSegment("S9", "N1", "N2", 100),
                                new Node("N9", "end")))
                .containsExactly(
                        "amendment.branch-astray | /amendments/0/branch/to | Amendment A1: branch"
                                + " S9 ends at node N2, but its end is node N9.",
                        "amendment.branch-astray | /amendments/0/branch/from | Amendment A1: branch"
                                + " S9 starts at node N1, but the breakout is node N8.");
    }

    @Test
    void anOpeningMustStandOnItsSegment() {
        reasons(
                        new AddOpening("A1", "", "S3", grommet("O9", 301)),
                        new ExtendBranch(
                                "A2",
                                "",
                                plainSegment("S9", "N5", "N9", 100)
                                        .withOpenings(List.of(grommet("O8", -1))),
                                new Node("N9", "end")))
                .containsExactly(
                        "amendment.opening-off-segment | /amendments/0/opening/positionMm |"
                            + " Amendment A1: opening O9 would stand at 301 mm on segment S3, which"
                            + " runs from 0 mm to 300 mm.",
                        "amendment.opening-off-segment | /amendments/1/branch/openings/0/positionMm"
                                + " | Amendment A2: opening O8 would stand at -1 mm on segment S9,"
                                + " which runs from 0 mm to 100 mm.");
    }

    @Test
    void aWireMayNotRunToItself() {
        reasons(
                        wire("A1", "W9", "L1/1", "L1/1"),
                        new MoveWireEnd("A2", "", "W3", Side.A, end("L1/1")))
                .containsExactly(
                        "amendment.wire-to-itself | /amendments/0/wire | Amendment A1: wire W9"
                                + " would run from point L1/1 to itself.",
                        "amendment.wire-to-itself | /amendments/1/to | Amendment A2: wire W3 would"
                                + " run from point L1/1 to itself.");
    }
}
