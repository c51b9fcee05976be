package org.loomwright.core.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.testing.LoomSketch.BLACK_BRAID;
import static org.loomwright.testing.LoomSketch.end;
import static org.loomwright.testing.LoomSketch.grommet;
import static org.loomwright.testing.LoomSketch.mm;
import static org.loomwright.testing.LoomSketch.plainWire;

import org.assertj.core.api.AbstractListAssert;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.difference.LoomDifference.Change;
import org.loomwright.core.difference.LoomDifference.Entry;
import org.loomwright.core.difference.LoomDifference.FieldChange;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.TestLooms;

import java.util.List;
import java.util.function.UnaryOperator;

class LoomDifferenceTest {

    private final Loom front = TestLooms.front();

    private static LoomSketch sketch() {
        return TestLooms.frontSketch();
    }

    private AbstractListAssert<?, List<? extends String>, String, ?> lines(Loom after) {
        return assertThat(
                LoomDifference.between(front, after).entries().stream().map(Entry::text).toList());
    }

    @Test
    void equalLoomsDoNotDiffer() {
        assertThat(LoomDifference.between(front, TestLooms.front()).isEmpty()).isTrue();
    }

    @Test
    void anAddedWireIsToldWithAllThatIsSaidOfIt() {
        lines(sketch().wire("W9", "GN", "F1/2", "L1/1").loom())
                .containsExactly(
                        "wire W9 added: circuit circuit of W9; colour GN; size 14/0.30; end A F1/2"
                                + " with bullet-4.7; end B L1/1 with bullet-4.7; condition good");
    }

    @Test
    void aRemovedWireIsTheMirrorOfAnAddedOne() {
        LoomDifference difference =
                LoomDifference.between(sketch().wire("W9", "G", "F1/2", "L1/1").loom(), front);

        assertThat(difference.entries())
                .singleElement()
                .satisfies(
                        entry -> {
                            assertThat(entry.change()).isEqualTo(Change.REMOVED);
                            assertThat(entry.thing()).isEqualTo(Subject.of(ThingKind.WIRE, "W9"));
                            assertThat(entry.fields())
                                    .contains(new FieldChange("colour", "G", null));
                            assertThat(entry.text()).startsWith("wire W9 removed: circuit ");
                        });
    }

    @Test
    void aChangedWireTellsOnlyWhatDiffers() {
        LoomSketch before = TestLooms.frontSketch().wire("W9", "G", "F1/2", "L1/1");
        LoomSketch after =
                TestLooms.frontSketch()
                        .wire(
                                plainWire("W9", "LGN", "F1/2", "L1/1")
                                        .withEnd(Side.B, end("L2/1", "ring-5")));

        assertThat(LoomDifference.between(before.loom(), after.loom()).entries())
                .extracting(Entry::text)
                .containsExactly(
                        "wire W9 changed: colour LGN, was G; end B L2/1 with ring-5, was L1/1 with"
                                + " bullet-4.7");
    }

    @Test
    void aChangedSegmentTellsLengthsWithUnitsAndWhatIsNoLongerSaid() {
        lines(sketch().with("S2", segment -> segment.withLength(mm(1100))).loom())
                .containsExactly(
                        "segment S2 changed: length 1100 mm, was 1000 mm; repeat readings none, was"
                                + " 998 mm, 1002 mm");
    }

    private static Loom withBox(
            @Nullable Fitting fitted, @Nullable Integer takes, Particulars said) {
        Device box =
                new Device(
                        "D9",
                        "fuse box",
                        DeviceKind.FUSE_BOX,
                        null,
                        said,
                        List.of(new Point("A", "N1", mm(1), takes), new Point("B", "N1", mm(1))));
        return sketch().device(box)
                .wire(
                        plainWire("W9", "G", "D9/A", "L1/1")
                                .withEnd(Side.A, new WireEnd("D9", "A", "ring-5", fitted)))
                .loom();
    }

    @Test
    void whatIsSaidOfADeviceAPointAndAnEndIsToldInWords() {
        Particulars said =
                new Particulars(
                        "horns",
                        Current.ofMilliamperes(30_000),
                        Voltage.ofMillivolts(12_000),
                        EarthPolarity.NEGATIVE,
                        List.of(
                                new FittedFuse(
                                        "A",
                                        "B",
                                        FuseStyle.BLADE,
                                        Current.ofMilliamperes(15_000))));
        Loom before = withBox(null, null, Particulars.NONE);
        Loom after = withBox(Fitting.BEFORE_COVERING, 2, said);

        assertThat(LoomDifference.between(before, after).entries())
                .extracting(Entry::text)
                .containsExactly(
                        "device D9 changed: serves horns, was none; rating 30 A, was none; made for"
                            + " 12 V, was none; needs earth negative, was none; fuses A to B 15 A"
                            + " (blade), was none",
                        "point D9/A changed: room 2 wire ends, was none",
                        "wire W9 changed: end A D9/A with ring-5, fitted before covering, was D9/A"
                                + " with ring-5");
    }

    @Test
    void departuresAndCoveringsAreToldInWords() {
        UnaryOperator<Segment> change =
                old ->
                        new Segment(
                                old.id(),
                                old.from(),
                                old.to(),
                                old.length(),
                                old.readings(),
                                new Departure(9, 60),
                                30,
                                new Finish(
                                        "cotton-braid",
                                        "B",
                                        List.of("R", "W"),
                                        null,
                                        3,
                                        BLACK_BRAID.evidence()),
                                old.openings());

        lines(sketch().with("S3", change).loom())
                .containsExactly(
                        "segment S3 changed: leaves at 9 o'clock, 60°, was none; bends 30°, was 0°;"
                            + " tracer yarns R, W, was none; picks none, was 12 on 25 mm; coats of"
                            + " lacquer 3, was 2");
    }

    @Test
    void anOpeningThatMovesToAnotherSegmentIsOneChange() {
        lines(
                        sketch().with("S1", segment -> segment.withOpenings(List.of()))
                                .opening("S3", grommet("O1", 20))
                                .loom())
                .containsExactly(
                        "opening O1 changed: on segment S3, was S1; position 20 mm, was 500 mm");
    }

    @Test
    void devicesAndTheirPointsAreToldApart() {
        Loom before =
                sketch().device(new Device("D9", "horn", DeviceKind.HORN, null, points("N1")))
                        .loom();
        Loom after =
                sketch().device(
                                new Device(
                                        "D9",
                                        "horn",
                                        DeviceKind.EARTH_POINT,
                                        Current.ofMilliamperes(4_500),
                                        points("N2")))
                        .loom();

        assertThat(LoomDifference.between(before, after).entries())
                .extracting(Entry::text)
                .containsExactly(
                        "device D9 changed: kind earth point, was horn; load 4.5 A, was none",
                        "point D9/1 changed: at node N2, was N1");
    }

    private static List<Point> points(String node) {
        return List.of(new Point("1", node, mm(60)));
    }

    @Test
    void vehicleNameDatumAndChecksAreCompared() {
        LoomDocument document = front.document();
        VehicleSheet sheet = document.vehicle();
        VehicleSheet sixVolt =
                new VehicleSheet(
                        sheet.name(),
                        sheet.year(),
                        sheet.hand(),
                        sheet.earth(),
                        Voltage.ofMillivolts(6_000),
                        List.of("dynamo changed"));
        LoomDocument other =
                new LoomDocument(
                        "other",
                        sixVolt,
                        document.datum(),
                        document.nodes().stream()
                                .map(n -> n.id().equals("N5") ? new Node("N5", "lamp") : n)
                                .toList(),
                        document.segments(),
                        document.devices(),
                        document.wires(),
                        List.of());

        lines(loom(other))
                .containsExactly(
                        "loom changed: name other, was sketch",
                        "vehicle changed: system voltage 6 V, was 12 V; remark 1 dynamo changed,"
                                + " was none",
                        "node N5 changed: name lamp, was node N5",
                        "check C1 removed: from node N1; to node N6; measured 2150 mm");
    }

    @Test
    void coloursOfTheLoomAreTold() {
        CustomColour gold = new CustomColour("XD", "gold", "#c9a227");
        LoomDocument document = sketch().document();
        lines(loom(document.withCustomColours(List.of(gold))))
                .containsExactly("loom changed: own colour XD gold (#c9a227), was none");
    }

    @Test
    void aSplitSegmentShowsAsChangedAndAdded() {
        LoomSketch split =
                sketch().with(
                                "S3",
                                s ->
                                        new Segment(
                                                "S3",
                                                "N2",
                                                "N9",
                                                mm(100),
                                                s.readings(),
                                                s.leaves(),
                                                s.bendDegrees(),
                                                s.finish(),
                                                s.openings()))
                        .segment("S9", "N9", "N4", 200)
                        .node("N9");

        assertThat(LoomDifference.between(front, split.loom()).entries())
                .extracting(entry -> entry.thing().words() + " " + entry.change().words())
                .containsExactly("node N9 added", "segment S3 changed", "segment S9 added");
    }

    private static Loom loom(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }
}
