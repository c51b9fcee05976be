package org.loomwright.document.drawing;

import org.loomwright.core.geometry.Point;
import org.loomwright.document.scene.Shape.Ink;

import java.util.List;

/** How a segment is drawn: an open tube as stock, a hatched one when changed, a solid one when new. */
final class LineLook {

    private static final double WALL_MM = 0.3;
    private static final double HATCH_MM = 1.1;

    private LineLook() {}

    static void draw(Pen pen, List<Point> points, double widthMm, Status status) {
        pen.line(points, Ink.BLACK, widthMm);
        double inner = widthMm - 2 * WALL_MM;
        switch (status) {
            case UNCHANGED -> pen.line(points, Ink.PAPER, inner);
            case CHANGED -> {
                pen.line(points, Ink.PAPER, inner);
                pen.dashed(points, Pen.ACCENT, inner, HATCH_MM);
            }
            case NEW -> {}
        }
    }
}
