package org.loomwright.document.drawing;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.layout.label.LabelRequest;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;

import java.util.List;

/** Some rows of text that stay together. */
record TextBlock(List<Row> rows) {

    private static final double LEADING = 1.22;
    private static final double BASE_LINE = 0.95;

    /** One row. */
    record Row(String text, double sizeMm, boolean bold, Ink ink) {}

    TextBlock {
        rows = List.copyOf(rows);
    }

    double widthMm() {
        return rows.stream()
                .mapToDouble(row -> Pen.widthMm(row.text(), row.sizeMm(), row.bold()))
                .max()
                .orElse(0);
    }

    double heightMm() {
        return rows.stream().mapToDouble(row -> row.sizeMm() * LEADING).sum();
    }

    LabelRequest request(List<Point> anchors, Point towards, double gapMm, double footMm) {
        return new LabelRequest(
                anchors,
                towards,
                Pen.length(widthMm()),
                Pen.length(heightMm()),
                Pen.length(gapMm),
                Pen.length(footMm));
    }

    /** Writes the rows, flush with the side that faces the anchor. */
    void write(Pen pen, Rectangle box, Point anchor) {
        boolean right = anchor.xMm() > box.rightMm() - box.widthMm() / 4;
        double top = box.topMm();
        for (Row row : rows) {
            pen.text(
                    row.text(),
                    right ? box.rightMm() : box.leftMm(),
                    top + row.sizeMm() * BASE_LINE,
                    row.sizeMm(),
                    row.bold(),
                    right ? Anchor.END : Anchor.START,
                    row.ink());
            top += row.sizeMm() * LEADING;
        }
    }

    /** Heights of the rows' middles below the block's top. */
    List<Double> middles() {
        double size = rows.getFirst().sizeMm() * LEADING;
        return java.util.stream.IntStream.range(0, rows.size())
                .mapToObj(i -> size * (i + 0.5))
                .toList();
    }
}
