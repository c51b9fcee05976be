package org.loomwright.document.drawing;

import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Polyline;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;
import org.loomwright.core.layout.LoomLayout;
import org.loomwright.core.layout.label.LabelPlace;
import org.loomwright.core.layout.label.LabelSpace;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.document.drawing.TextBlock.Row;
import org.loomwright.document.scene.Shape.Ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The legs of a loom with their marks and names. */
final class LoomPicture {

    private static final double MEASURE_MM = 2.3;
    private static final double NAME_MM = 2.2;
    private static final double SMALL_MM = 1.9;
    private static final double INSET_MM = 2;
    private static final double CALL_OUT = 100;
    private static final double FAN_MM = 16;

    private final LoomAnalysis analysis;
    private final Loom loom;
    private final LoomLayout layout;
    private final Map<String, Status> status;
    private final boolean compared;
    private final Pen pen;
    private final LabelSpace space;
    private final double shiftX;
    private final double shiftY;
    private final NodeTexts texts;
    private final CallOuts callOuts;
    private double leadersMm;
    private int unnamed;

    LoomPicture(
            LoomAnalysis analysis,
            LoomLayout layout,
            Map<String, Status> status,
            boolean compared,
            Rectangle area,
            Pen pen) {
        this.analysis = analysis;
        this.loom = analysis.loom();
        this.layout = layout;
        this.status = status;
        this.compared = compared;
        this.pen = pen;
        this.space = new LabelSpace(area.grown(-INSET_MM));
        this.shiftX = area.leftMm() + (area.widthMm() - layout.width().toDoubleMillimetres()) / 2;
        this.shiftY = area.topMm() + (area.heightMm() - layout.height().toDoubleMillimetres()) / 2;
        this.texts = new NodeTexts(loom);
        this.callOuts = new CallOuts(pen, space);
    }

    void draw(Detail detail) {
        loom.walk().forEach(this::drawLeg);
        loom.walk().forEach(this::drawOpenings);
        loom.nodes().keySet().forEach(this::drawNode);
        writeBreakout(loom.datum());
        // Where little room is left, what is hardest to place goes first.
        if (detail == Detail.BRANCHES) {
            writeBreakouts();
            loom.walk().forEach(this::writeMeasure);
        } else {
            loom.walk().forEach(this::writeMeasure);
            writeBreakouts();
            byRows().forEach(this::writeEnds);
            loom.walk().forEach(this::writeOpenings);
        }
        unnamed = callOuts.writeList();
    }

    private void writeBreakouts() {
        loom.nodes().keySet().stream()
                .filter(node -> !node.equals(loom.datum()))
                .forEach(this::writeBreakout);
    }

    LoomLayout layout() {
        return layout;
    }

    Pen pen() {
        return pen;
    }

    /** How many names found no room at all. */
    int unnamed() {
        return unnamed;
    }

    /** How badly the names lie: leaders in millimetres, and much for every name that became a number. */
    double awkwardness() {
        return leadersMm + CALL_OUT * callOuts.count();
    }

    /** Nodes with the most devices first: their blocks are the hardest to place. */
    private List<String> byRows() {
        return loom.nodes().keySet().stream()
                .sorted(
                        Comparator.comparingInt((String node) -> -texts.devices(node).size())
                                .thenComparing(node -> node))
                .toList();
    }

    private Point moved(Point point) {
        return new Point(point.xMm() + shiftX, point.yMm() + shiftY);
    }

    private Polyline leg(Segment segment) {
        return new Polyline(
                layout.getLeg(segment.id()).points().stream().map(this::moved).toList());
    }

    private Point node(String id) {
        return moved(layout.getNode(id));
    }

    private double widthMm(Segment segment) {
        double covered = analysis.bundles().get(segment.id()).covered().toDoubleMillimetres();
        return Math.clamp(0.5 + covered * 0.18, 0.9, 4.5);
    }

    private Status statusOf(Segment segment) {
        return status.getOrDefault(segment.id(), Status.UNCHANGED);
    }

    private void drawLeg(Segment segment) {
        Polyline leg = leg(segment);
        LineLook.draw(pen, leg.points(), widthMm(segment), statusOf(segment));
        leg.pieces().forEach(piece -> space.occupy(piece, Pen.length(widthMm(segment))));
    }

    private void drawOpenings(Segment segment) {
        Polyline leg = leg(segment);
        for (Opening opening : segment.openings()) {
            double along = layout.scale().onSheet(opening.position()).toDoubleMillimetres();
            OpeningMark.draw(
                    pen, opening.kind(), leg.atMm(along), leg.pieceAtMm(along), widthMm(segment));
            space.occupy(OpeningMark.bounds(leg.atMm(along), widthMm(segment)));
        }
    }

    private void drawNode(String node) {
        if (node.equals(loom.datum())) {
            DatumMark.draw(pen, node(node));
            space.occupy(DatumMark.bounds(node(node)));
        } else {
            pen.add(
                    new org.loomwright.document.scene.Shape.Disc(
                            node(node), 0.75, Ink.BLACK, null));
        }
    }

    private void writeMeasure(Segment segment) {
        Polyline leg = leg(segment);
        double length = leg.lengthMm();
        List<Point> anchors = new ArrayList<>();
        for (double share : new double[] {0.5, 0.35, 0.65, 0.22, 0.78}) {
            anchors.add(leg.atMm(length * share));
        }
        Straight middle = leg.pieceAtMm(length / 2);
        Point normal =
                new Point(
                        middle.to().yMm() - middle.from().yMm(),
                        middle.from().xMm() - middle.to().xMm());
        String words = segment.id() + "  " + segment.length().toMillimetres().toPlainString();
        boolean stands = compared && statusOf(segment) != Status.UNCHANGED;
        Ink ink = stands ? Pen.ACCENT : Ink.BLACK;
        String suffix = stands ? (statusOf(segment) == Status.NEW ? " new" : " changed") : "";
        write(
                new TextBlock(List.of(new Row(words + suffix, MEASURE_MM, true, ink))),
                anchors,
                normal,
                widthMm(segment) / 2 + 0.55);
    }

    private void writeBreakout(String node) {
        if (loom.degree(node) > 1 || node.equals(loom.datum())) {
            write(
                    new TextBlock(
                            List.of(
                                    new Row(texts.name(node), NAME_MM, true, Ink.BLACK),
                                    new Row(texts.distance(node), SMALL_MM, false, Ink.BLACK))),
                    List.of(node(node)),
                    new Point(0, -1),
                    node.equals(loom.datum()) ? 3.5 : 2.2);
        }
    }

    private void writeEnds(String node) {
        if (!texts.devices(node).isEmpty()) {
            writeDevices(node);
        } else if (loom.degree(node) == 1 && !node.equals(loom.datum())) {
            write(
                    new TextBlock(List.of(new Row(texts.name(node), NAME_MM, false, Ink.BLACK))),
                    List.of(node(node)),
                    onward(node),
                    1.5);
        }
    }

    private void writeDevices(String node) {
        List<Row> rows =
                texts.devices(node).stream()
                        .map(text -> new Row(text, NAME_MM, false, Ink.BLACK))
                        .toList();
        TextBlock block = new TextBlock(rows);
        space.place(block.request(List.of(node(node)), onward(node), 6, footMm(node)))
                .ifPresentOrElse(
                        place -> drawFan(block, place),
                        () -> callOuts.add(node(node), texts.devices(node)));
    }

    private double footMm(String node) {
        return node.equals(loom.datum()) ? 4 : 1.4;
    }

    /** Tails as short lines from the node to each name, or one leader to a bar when the names lie far off. */
    private void drawFan(TextBlock block, LabelPlace place) {
        Rectangle box = place.box();
        boolean fromRight = place.anchor().xMm() > box.rightMm() - box.widthMm() / 4;
        double x = fromRight ? box.rightMm() + 0.4 : box.leftMm() - 0.4;
        block.write(pen, box, place.anchor());
        leadersMm += place.leader() == null ? 0 : place.leader().lengthMm();
        pen.line(
                List.of(new Point(x, box.topMm() + 0.3), new Point(x, box.bottomMm() - 0.3)),
                Ink.BLACK,
                0.3);
        boolean beside =
                place.anchor().xMm() < box.leftMm() || place.anchor().xMm() > box.rightMm();
        boolean near = place.leader() == null || place.leader().lengthMm() < FAN_MM;
        if (near && beside) {
            for (double middle : block.middles()) {
                pen.line(
                        List.of(place.anchor(), new Point(x, box.topMm() + middle)),
                        Ink.BLACK,
                        Pen.FINE_MM);
            }
        } else {
            Straight leader =
                    place.leader() == null
                            ? new Straight(
                                    place.anchor(),
                                    new Point(
                                            x,
                                            Math.clamp(
                                                    place.anchor().yMm(),
                                                    box.topMm(),
                                                    box.bottomMm())))
                            : place.leader();
            pen.line(leader, Ink.BLACK, Pen.FINE_MM);
        }
    }

    /** The direction in which the loom arrives at the node. */
    private Point onward(String node) {
        return loom.findArriving(node)
                .map(segment -> leg(segment).pieces().getLast())
                .map(
                        last ->
                                new Point(
                                        last.to().xMm() - last.from().xMm(),
                                        last.to().yMm() - last.from().yMm()))
                .orElse(new Point(0, 1));
    }

    private void writeOpenings(Segment segment) {
        Polyline leg = leg(segment);
        for (Opening opening : segment.openings()) {
            Point at = leg.atMm(layout.scale().onSheet(opening.position()).toDoubleMillimetres());
            String words = "%s %s".formatted(opening.kind().words(), opening.id());
            write(
                    new TextBlock(List.of(new Row(words, SMALL_MM, false, Pen.GREY))),
                    List.of(at),
                    new Point(0, 1),
                    OpeningMark.reachMm(widthMm(segment)) + 0.5);
        }
    }

    private void write(TextBlock block, List<Point> anchors, Point towards, double gapMm) {
        space.place(block.request(anchors, towards, gapMm, gapMm + 0.5))
                .ifPresentOrElse(
                        place -> {
                            if (place.leader() != null) {
                                leadersMm += place.leader().lengthMm();
                                pen.line(place.leader(), Pen.GREY, Pen.FINE_MM);
                            }
                            block.write(pen, place.box(), place.anchor());
                        },
                        () ->
                                callOuts.add(
                                        anchors.getFirst(),
                                        block.rows().stream().map(Row::text).toList()));
    }
}
