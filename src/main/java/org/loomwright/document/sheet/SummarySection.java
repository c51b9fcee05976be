package org.loomwright.document.sheet;

import org.loomwright.core.colour.ColourReport;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Hand;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.document.pdf.Cell;
import org.loomwright.document.pdf.Face;
import org.loomwright.document.pdf.Flow;
import org.loomwright.document.pdf.Table;
import org.loomwright.document.pdf.Table.Column;
import org.loomwright.document.pdf.Tag;
import org.loomwright.document.pdf.TextStyle;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.sheet.content.Acceptance;
import org.loomwright.document.sheet.content.Figures;
import org.loomwright.document.sheet.content.Footing;
import org.loomwright.document.sheet.content.Tally;
import org.loomwright.document.sheet.content.WireChange.Kind;
import org.loomwright.document.sheet.content.WireWork;
import org.loomwright.document.sheet.style.Part;
import org.loomwright.document.sheet.style.Type;

import java.util.List;

/** The first page: whose job it is, what it is about, how much it is, and what the figures rest on. */
final class SummarySection {

    private static final TextStyle TITLE = TextStyle.of(Face.BOLD, 22);
    private static final TextStyle SUBTITLE = TextStyle.of(Face.REGULAR, 11);
    private static final TextStyle LOUD = TextStyle.of(Face.BOLD, 13).spaced(0.9);
    private static final double PLATE_HEIGHT_PT = 25;
    private static final double PLATE_GAP_PT = 6;

    private final JobSheet sheet;
    private final WireWork work;

    SummarySection(JobSheet sheet, WireWork work) {
        this.sheet = sheet;
        this.work = work;
    }

    void set(Flow flow) {
        Loom loom = sheet.change().after().loom();
        VehicleSheet vehicle = loom.document().vehicle();
        flow.text(vehicle.name() + ", " + vehicle.year(), TITLE, 0);
        flow.text(loom.name(), SUBTITLE, 0);
        flow.section(Part.SUMMARY.title());
        parties(flow);
        vehicle(flow, vehicle);
        figures(flow);
        findings(flow);
        flow.heading("What the figures rest on");
        new Footing(sheet.settings(), sheet.catalogue(), sheet.change().before().loom(), loom)
                .sentences()
                .forEach(flow::bullet);
    }

    private void parties(Flow flow) {
        Table table = pairs();
        table.row(
                Type.words("Customer"),
                Type.strong(sheet.customer()),
                Type.words("Work order"),
                Type.strong(sheet.workOrderNumber()));
        table.row(
                Type.words("Workshop"),
                Type.strong(sheet.workshop()),
                Type.words("Status"),
                Type.strong(sheet.status()));
        table.row(
                Type.words("Due"),
                Type.strong(
                        sheet.dueDate() == null ? "not agreed yet" : Figures.date(sheet.dueDate())),
                Type.words("Prepared"),
                Type.strong(Figures.date(sheet.preparedOn())));
        flow.table(table);
        flow.text(
                "Specification revision %d, content hash %s. Work only to this revision; a sheet with another hash is another job."
                        .formatted(sheet.revisionNumber(), sheet.revisionHash()),
                Type.CELL,
                0);
        if (!sheet.notes().isBlank()) {
            flow.heading("Also agreed");
            flow.text(sheet.notes());
        }
    }

    private static Table pairs() {
        return new Table(
                List.of(
                        Column.words("", 52),
                        Column.words("", 200),
                        Column.words("", 60),
                        Column.words("", 180)));
    }

    private void vehicle(Flow flow, VehicleSheet vehicle) {
        flow.heading("Vehicle");
        plates(flow, vehicle);
        if (vehicle.notStandard().isEmpty()) {
            flow.text("Recorded as standard; nothing that differs is noted.");
        } else {
            flow.text("Not standard:", Type.TEXT_STRONG, 0);
            vehicle.notStandard().forEach(flow::bullet);
        }
    }

    /** Earth, hand and voltage as plates that nobody can overlook; the earth white on black. */
    private static void plates(Flow flow, VehicleSheet vehicle) {
        flow.makeRoom(PLATE_HEIGHT_PT);
        double top = flow.take(PLATE_HEIGHT_PT + 5);
        double left = flow.paper().leftPt();
        String earth =
                vehicle.earth() == EarthPolarity.POSITIVE ? "POSITIVE EARTH" : "NEGATIVE EARTH";
        String hand = vehicle.hand() == Hand.RIGHT ? "RIGHT-HAND DRIVE" : "LEFT-HAND DRIVE";
        double next = plate(flow, earth, left, top, true);
        next = plate(flow, vehicle.system().toString(), next + PLATE_GAP_PT, top, false);
        plate(flow, hand, next + PLATE_GAP_PT, top, false);
    }

    private static double plate(Flow flow, String text, double left, double top, boolean inverse) {
        double width = LOUD.widthOf(text) + 22;
        TextStyle style = inverse ? LOUD.in(Ink.PAPER) : LOUD;
        Tag tag = flow.section().child(Tag.Role.PARAGRAPH);
        flow.page()
                .add(
                        tag,
                        canvas -> {
                            Ink fill = inverse ? Ink.BLACK : Ink.PAPER;
                            canvas.box(left, top, width, PLATE_HEIGHT_PT, fill, 1.2);
                            canvas.text(text, style, left + 11.5, top + 17);
                        });
        return left + width;
    }

    private void figures(Flow flow) {
        flow.heading("What is to be done");
        Table table =
                new Table(
                        List.of(
                                Column.words("", 165),
                                Column.figures("", 60),
                                Column.words("", 20),
                                Column.words("", 185),
                                Column.figures("", 60)));
        row(table, "Wires to add", count(Kind.ADDED), "New branches", branches());
        row(
                table,
                "Wires to change",
                count(Kind.CHANGED),
                "Segments touched",
                Integer.toString(work.touched().size()));
        row(
                table,
                "Wires to remove",
                count(Kind.REMOVED),
                "Covered loom touched",
                Figures.metres(work.coveredLengthTouched()));
        row(
                table,
                "New wire to cut, in all",
                Figures.metres(work.cutInAll()),
                "Findings, loom and electrical",
                "%d + %d"
                        .formatted(
                                sheet.change().findings().size(),
                                sheet.electrical().report().findings().size()));
        flow.table(table);
        flow.note(
                "Touched: the segment is new, other wires run through it than before, a wire in it"
                        + " is made anew, or its covering is to be another.");
    }

    private static void row(Table table, String one, String first, String two, String second) {
        table.row(
                Type.words(one),
                Type.strongFigure(first),
                Cell.empty(),
                Type.words(two),
                Type.strongFigure(second));
    }

    private String count(Kind kind) {
        return Integer.toString(work.of(kind).size());
    }

    private String branches() {
        return Integer.toString(work.newBranches().size());
    }

    private void findings(Flow flow) {
        List<Finding> findings = sheet.change().findings();
        Acceptance acceptance = sheet.electrical().acceptance();
        flow.heading("Findings about the loom itself: " + Tally.of(findings, acceptance));
        flow.text(elsewhere(), Type.TEXT_STRONG, 0);
        if (findings.isEmpty()) {
            flow.text(
                    "None. That is not a clearance; it says only that no rule of this program was"
                            + " broken.");
            return;
        }
        Table table = new Table(List.of(Column.words("Weight", 52), Column.words("Finding", 440)));
        for (Finding finding : findings) {
            Cell text = Type.words(finding.text());
            table.row(
                    Type.strong(finding.severity().name()),
                    acceptance.covers(finding)
                            ? text.then(
                                    "Accepted, see " + Part.ACCEPTED.reference() + ".", Type.STRONG)
                            : text);
        }
        flow.table(table);
    }

    private String elsewhere() {
        List<Finding> electrical = sheet.electrical().report().plainFindings();
        ColourReport colours = sheet.electrical().colours();
        return "Electrical findings follow in %s: %s. Colours follow in %s: %s, %s, %s."
                .formatted(
                        Part.ELECTRICAL.reference(),
                        Tally.of(electrical, sheet.electrical().acceptance()),
                        Part.COLOURS.reference(),
                        Figures.count(
                                (int)
                                        colours.differing().stream()
                                                .map(Finding::subject)
                                                .distinct()
                                                .count(),
                                "new wire differs from the code",
                                "new wires differ from the code"),
                        Figures.count(
                                colours.clashes().size(),
                                "place with wires to tag",
                                "places with wires to tag"),
                        Figures.count(
                                colours.audit().size(),
                                "recorded wire to doubt",
                                "recorded wires to doubt"));
    }
}
