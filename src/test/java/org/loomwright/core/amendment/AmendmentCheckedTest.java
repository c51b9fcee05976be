package org.loomwright.core.amendment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.core.amendment.Amending.accept;
import static org.loomwright.core.amendment.Amending.breakOut;
import static org.loomwright.core.amendment.Amending.refuse;
import static org.loomwright.testing.LoomSketch.end;
import static org.loomwright.testing.LoomSketch.grommet;
import static org.loomwright.testing.LoomSketch.mm;
import static org.loomwright.testing.LoomSketch.plainSegment;
import static org.loomwright.testing.LoomSketch.plainWire;

import org.junit.jupiter.api.Test;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddOpening;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.BreakOutBranch;
import org.loomwright.core.amendment.Amendment.ChangeCovering;
import org.loomwright.core.amendment.Amendment.ChangeLength;
import org.loomwright.core.amendment.Amendment.ChangeTerminal;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.amendment.Amendment.ReplaceWire;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Side;
import org.loomwright.core.quantity.Current;
import org.loomwright.testing.TestLooms;

import java.util.List;

/** Faults that the checker finds in the amended loom are told of the amendments that made them. */
class AmendmentCheckedTest extends AmendmentRefusals {

    @Test
    void whatTheCheckerFindsIsToldOfTheAmendmentThatWroteIt() {
        Finish unknown =
                new Finish(
                        "silk", null, List.of(), null, 0, new Evidence(EvidenceKind.ASSUMED, ""));
        Device heavy =
                new Device(
                        "D9",
                        " ",
                        DeviceKind.LAMP,
                        Current.ofMilliamperes(-1),
                        List.of(new Point("1", "N5", mm(-1))));

        reasons(
                        wire("A1", "W9", "F1/2", "L1/1"),
                        new ReplaceWire("A2", "", "W9", WireColour.parse("T"), "1/1"),
                        new ChangeTerminal("A3", "", "W9", Side.B, "spoon"),
                        new AddWire(
                                "A4",
                                "",
                                plainWire("W10", "G", "F1/2", "L1/1")
                                        .withEnd(Side.A, end("F1/2", "fork"))),
                        breakOut("A5", "S2", 400),
                        new ChangeCovering("A6", "", "S2", unknown),
                        new AddDevice("A7", "", heavy),
                        new ChangeLength("A8", "", "S3", mm(20_000)))
                .containsExactlyInAnyOrder(
                        "amendment.length-not-sane | /amendments/7/lengthMm | Amendment A8: The"
                            + " length of segment S3 is 20000 mm; more than 15000 mm is taken for a"
                            + " slip.",
                        "amendment.covering-unknown | /amendments/5/finish | Amendment A6: segment"
                                + " S2 has covering 'silk', which the catalogue does not know.",
                        "amendment.text-length | /amendments/6/device | Amendment A7: The name of"
                                + " device D9 must have 1 to 300 characters, has 0.",
                        "amendment.load-not-sane | /amendments/6/device | Amendment A7: The load of"
                                + " device D9 is -0.001 A; it must be 0 A to 1000 A.",
                        "amendment.length-negative | /amendments/6/device/points/0 | Amendment A7:"
                                + " The tail of point D9/1 is -1 mm; it must not be negative.",
                        "amendment.colour-unknown | /amendments/1/colour | Amendment A2: Wire W9"
                            + " has colour 'T', which neither the colour code nor the loom knows.",
                        "amendment.size-unknown | /amendments/1/size | Amendment A2: Wire W9 has"
                                + " conductor size '1/1', which the catalogue does not know.",
                        "amendment.terminal-unknown | /amendments/2/terminal | Amendment A3: End B"
                                + " of wire W9 has terminal 'spoon', which the catalogue does not"
                                + " know.",
                        "amendment.terminal-unknown | /amendments/3/wire/a | Amendment A4: End A of"
                            + " wire W10 has terminal 'fork', which the catalogue does not know.");
    }

    @Test
    void malformedIdsOfEveryNewThingAreToldOfTheirAmendment() {
        BreakOutBranch broken =
                new BreakOutBranch(
                        "A1",
                        "",
                        "S2",
                        mm(100),
                        new Node("N 8", "breakout"),
                        "S 8",
                        plainSegment("S 9", "N 8", "N 9", 100)
                                .withOpenings(List.of(grommet("O 9", 10))),
                        new Node("N 9", "end"));
        Device device =
                new Device(
                        "D9",
                        "lamp",
                        DeviceKind.LAMP,
                        null,
                        List.of(new Point("x y", "N5", mm(1))));

        assertThat(refuse(stock, broken, new AddDevice("A2", "", device)))
                .extracting(finding -> finding.subject().pointer())
                .containsExactlyInAnyOrder(
                        "/amendments/0/breakout",
                        "/amendments/0/farSegment",
                        "/amendments/0/branch",
                        "/amendments/0/end",
                        "/amendments/0/branch/openings/0",
                        "/amendments/1/device/points/0");
    }

    @Test
    void refusalsAndTheCheckersFaultsAreToldTogether() {
        assertThat(
                        refuse(
                                stock,
                                new RemoveWire("A1", "", "W77"),
                                new ReplaceWire("A2", "", "W1", WireColour.parse("T"), "14/0.30")))
                .extracting(Finding::code)
                .containsExactly("amendment.wire-unknown", "amendment.colour-unknown");
    }

    @Test
    void aSlipThatALaterAmendmentCorrectsIsLetPass() {
        AmendedLoom amended =
                accept(
                        stock,
                        new ReplaceWire("A1", "", "W1", WireColour.parse("T"), "14/0.30"),
                        new ReplaceWire("A2", "", "W1", WireColour.parse("NG"), "14/0.30"));

        assertThat(TestLooms.wire(amended.loom(), "W1").colour()).hasToString("NG");
    }

    @Test
    void whatNoAmendmentWroteIsToldOfTheLoom() {
        Amendment[] many = new Amendment[201];
        for (int i = 0; i < many.length; i++) {
            many[i] = new AddOpening("A" + i, "", "S4", grommet("P" + i, 1 + i));
        }

        reasons(many)
                .containsExactly(
                        "amendment.too-many |  | The amended loom: There are 201 openings in"
                                + " segment S4; at most 200 are taken.");
    }

    @Test
    void aRefusedListLeavesTheStockLoomAsItWas() {
        refuse(stock, new RemoveWire("A1", "", "W1"), new RemoveWire("A2", "", "W1"));

        assertThat(stock).isEqualTo(TestLooms.front());
    }
}
