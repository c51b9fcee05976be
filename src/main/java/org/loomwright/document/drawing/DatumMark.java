package org.loomwright.document.drawing;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;

import java.util.List;

/** The mark of the node from which everything is measured: a disc in a ring with a cross through it. */
final class DatumMark {

    private static final double RADIUS_MM = 2.4;
    private static final double CROSS_MM = 3.4;

    private DatumMark() {}

    static void draw(Pen pen, Point at) {
        pen.add(new Shape.Disc(at, RADIUS_MM, Ink.PAPER, Stroke.full(Ink.BLACK, 0.5)));
        pen.add(new Shape.Disc(at, RADIUS_MM / 2, Ink.BLACK, null));
        pen.line(
                List.of(
                        new Point(at.xMm(), at.yMm() - CROSS_MM),
                        new Point(at.xMm(), at.yMm() + CROSS_MM)),
                Ink.BLACK,
                0.25);
        pen.line(
                List.of(
                        new Point(at.xMm() - CROSS_MM, at.yMm()),
                        new Point(at.xMm() + CROSS_MM, at.yMm())),
                Ink.BLACK,
                0.25);
    }

    static Rectangle bounds(Point at) {
        return Rectangle.around(at, at).grown(CROSS_MM);
    }
}
