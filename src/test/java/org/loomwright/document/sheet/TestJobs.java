package org.loomwright.document.sheet;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.Electrics;
import org.loomwright.app.TestElectrics;
import org.loomwright.app.WiredLoom;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.CustomColour;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Label;
import org.loomwright.document.scene.Shape.Stroke;
import org.loomwright.document.sheet.SheetPictures.BranchPicture;
import org.loomwright.document.sheet.electrical.ElectricalSide;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;
import org.loomwright.testing.TestLooms;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Invented jobs, from nothing at all to a crowd. */
final class TestJobs {

    static final String HASH = "3f7a9c0e5b8d1246f0a3c7e9b2d4861507fa9c3e6b8d0214f5a7c9e1b3d68240";
    static final LocalDate PREPARED = LocalDate.of(2027, 3, 8);
    static final String NUMBER = "LW-2027-0042";

    private TestJobs() {}

    /** Two spot lamps on a new branch, one wire replaced, one moved, one gone. */
    static JobSheet spotLamps() {
        Loom before = TestLooms.front();
        Loom after = amendedFront().loom();
        return withPictures(
                job(before, after, Map.of("S2X", "S2"), amendments()),
                new SheetPictures(
                        picture(240, 120), List.of(new BranchPicture("S1", picture(70, 70)))));
    }

    /** A job in which nothing changes. */
    static JobSheet nothing() {
        return job(TestLooms.front(), TestLooms.front(), Map.of(), List.of());
    }

    /** A job that adds so many wires of one kind and names everything as its reason says. */
    static JobSheet crowd(int wires, String circuit) {
        Loom before = TestLooms.front();
        LoomSketch sketch = TestLooms.frontSketch();
        List<Amendment> amendments = new ArrayList<>();
        for (int i = 1; i <= wires; i++) {
            String id = "X%03d".formatted(i);
            Wire plain = LoomSketch.plainWire(id, i % 2 == 0 ? "GN" : "U", "F1/1", "L1/1");
            Wire wire =
                    new Wire(
                            id,
                            circuit,
                            plain.colour(),
                            plain.size(),
                            plain.a(),
                            plain.b(),
                            Condition.NEW);
            sketch.wire(wire);
            amendments.add(new Amendment.AddWire("A%03d".formatted(i), circuit, wire));
        }
        return job(before, sketch.loom(), Map.of(), amendments);
    }

    /** A job with one new wire, green with a tracer in a colour that only the loom has. */
    static JobSheet goldTracer() {
        List<CustomColour> own = List.of(new CustomColour("XD", "gold", "#c9a227"));
        Wire wire = LoomSketch.plainWire("X001", "GXD", "F1/1", "L1/1");
        return job(
                proven(TestLooms.frontSketch().document().withCustomColours(own)),
                proven(TestLooms.frontSketch().wire(wire).document().withCustomColours(own)),
                Map.of(),
                List.of(new Amendment.AddWire("A001", "fog lamps", wire)));
    }

    private static Loom proven(LoomDocument document) {
        return LoomChecker.check(document, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    static JobSheet job(
            Loom before, Loom after, Map<String, String> parts, List<Amendment> amendments) {
        AmendedLoom plain = new AmendedLoom(after, Map.of(), Map.of(), List.of(), Map.of());
        return job(before, plain, parts, amendments);
    }

    static JobSheet job(
            Loom before,
            AmendedLoom amended,
            Map<String, String> parts,
            List<Amendment> amendments) {
        Loom after = amended.loom();
        BundlePacker packer = new BundlePacker(100);
        Map<String, String> recorded = new LinkedHashMap<>();
        before.segments().keySet().forEach(id -> recorded.put(id, id));
        recorded.putAll(parts);
        ChangeAnalysis change =
                ChangeAnalysis.of(
                        LoomAnalysis.of(
                                before, AnalysisSettings.USUAL, TestCatalogue.get(), packer),
                        LoomAnalysis.of(after, AnalysisSettings.USUAL, TestCatalogue.get(), packer),
                        recorded,
                        TestCatalogue.get());
        return new JobSheet(
                NUMBER,
                HASH,
                3,
                "Orla Fennimore",
                "Tenter Lane Loom Works",
                LocalDate.of(2027, 5, 28),
                "Keep the old covering as a sample.",
                "accepted",
                PREPARED,
                change,
                amendments,
                TestCatalogue.get(),
                AnalysisSettings.USUAL,
                SheetPictures.NONE,
                electrical(new WiredLoom(before, amended, AnalysisSettings.USUAL)));
    }

    private static ElectricalSide electrical(WiredLoom wired) {
        Electrics electrics = TestElectrics.get();
        return new ElectricalSide(
                electrics.basis(wired),
                electrics.report(wired, Changes.SOUGHT),
                electrics.colours(wired),
                electrics.open(wired),
                List.of());
    }

    /** The same job with findings that the customer accepts. */
    static JobSheet accepting(JobSheet sheet, List<AcceptedFinding> accepted) {
        ElectricalSide side = sheet.electrical();
        return with(
                sheet,
                new ElectricalSide(
                        side.basis(), side.report(), side.colours(), side.open(), accepted));
    }

    /** The same job with another electrical side. */
    static JobSheet with(JobSheet sheet, ElectricalSide side) {
        return changed(sheet, sheet.revisionHash(), sheet.dueDate(), sheet.pictures(), side);
    }

    /** The same job under another revision. */
    static JobSheet withHash(JobSheet sheet, String hash) {
        return changed(sheet, hash, sheet.dueDate(), sheet.pictures());
    }

    /** The same job without drawings. */
    static JobSheet withoutPictures(JobSheet sheet) {
        return withPictures(sheet, SheetPictures.NONE);
    }

    /** The same job with other drawings. */
    static JobSheet withPictures(JobSheet sheet, SheetPictures pictures) {
        return changed(sheet, sheet.revisionHash(), sheet.dueDate(), pictures);
    }

    /** A job with everything left out that may be left out. */
    static JobSheet bare() {
        return changed(nothing(), HASH, null, SheetPictures.NONE);
    }

    private static JobSheet changed(
            JobSheet sheet, String hash, @Nullable LocalDate due, SheetPictures pictures) {
        return changed(sheet, hash, due, pictures, sheet.electrical());
    }

    private static JobSheet changed(
            JobSheet sheet,
            String hash,
            @Nullable LocalDate due,
            SheetPictures pictures,
            ElectricalSide electrical) {
        return new JobSheet(
                sheet.workOrderNumber(),
                hash,
                sheet.revisionNumber(),
                sheet.customer(),
                sheet.workshop(),
                due,
                due == null ? "" : sheet.notes(),
                sheet.status(),
                sheet.preparedOn(),
                sheet.change(),
                sheet.amendments(),
                sheet.catalogue(),
                sheet.settings(),
                pictures,
                electrical);
    }

    /** A picture with one of each shape. */
    static Scene picture(double widthMm, double heightMm) {
        Stroke thin = Stroke.full(Ink.BLACK, 0.3);
        Point centre = new Point(widthMm / 2, heightMm / 2);
        return new Scene(
                "Test picture",
                "One of each shape.",
                widthMm,
                heightMm,
                List.of(
                        new Shape.Box(new Point(0, 0), widthMm, heightMm, null, thin),
                        new Shape.Disc(centre, 20, new Ink("#1f4fa3"), thin),
                        new Shape.Area(
                                List.of(new Point(5, 5), new Point(15, 5), new Point(5, 15)),
                                new Ink("#c0262d"),
                                null),
                        new Shape.Line(
                                List.of(new Point(0, 0), centre, new Point(widthMm, 10)),
                                new Stroke(Ink.BLACK, 0.5, List.of(2.0, 1.0))),
                        new Label(
                                "headlamp breakout", centre, 4, Anchor.START, 30, true, Ink.BLACK),
                        new Label("40 mm", centre, 4, Anchor.END, 0, false, Ink.BLACK)));
    }

    private static LoomSketch amendedFront() {
        Wire w3 = LoomSketch.plainWire("W3", "UR", "K1/2", "L1/1");
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 600)
                .segment("S2", "N2", "N7", 700)
                .segment("S2X", "N7", "N3", 300)
                .segment("S6", "N7", "N8", 400)
                .segment("S3", "N2", "N4", 300)
                .segment("S4", "N3", "N5", 450)
                .segment("S5", "N3", "N6", 550)
                .opening("S1", "O1", 500)
                .opening("S2", "O2", 250)
                .opening("S2X", "O3", 100)
                .device("F1", DeviceKind.FUSE_BOX, "N1", "N1")
                .device("K1", DeviceKind.SWITCH, "N1", "N1")
                .device("C1", DeviceKind.CONTROL_BOX, "N4", "N4")
                .device("L1", DeviceKind.LAMP, "N5", "N5")
                .device("L2", DeviceKind.LAMP, "N6", "N6")
                .device("P1", DeviceKind.LAMP, "N8", "N8")
                .wire("W1", "N", "C1/1", "F1/1")
                .wire("W2", "U", "F1/1", "K1/1")
                .wire(
                        new Wire(
                                "W3",
                                w3.circuit(),
                                WireColour.parse("UR"),
                                "28/0.30",
                                w3.a(),
                                w3.b(),
                                Condition.NEW))
                .wire("W4", "UR", "K1/2", "L2/1")
                .wire("W10", "UY", "F1/2", "P1/1")
                .wire("W11", "B", "P1/2", "C1/2");
    }

    private static List<Amendment> amendments() {
        return List.of(
                new Amendment.BreakOutBranch(
                        "A1",
                        "spot lamps on the front bar",
                        "S2",
                        LoomSketch.mm(700),
                        new Node("N7", "spot lamp breakout"),
                        "S2X",
                        LoomSketch.plainSegment("S6", "N7", "N8", 400),
                        new Node("N8", "front bar")),
                new Amendment.AddDevice(
                        "A2", "", LoomSketch.plainDevice("P1", DeviceKind.LAMP, "N8", "N8")),
                new Amendment.AddWire(
                        "A3", "feed", LoomSketch.plainWire("W10", "UY", "F1/2", "P1/1")),
                new Amendment.AddWire(
                        "A4",
                        "earth – to −, not the body",
                        LoomSketch.plainWire("W11", "B", "P1/2", "C1/2")),
                new Amendment.ReplaceWire(
                        "A5", "55 W bulbs", "W3", WireColour.parse("UR"), "28/0.30"),
                new Amendment.MoveWireEnd("A6", "", "W2", Side.A, LoomSketch.end("F1/1")),
                new Amendment.RemoveWire("A7", "not needed any more", "W5"));
    }
}
