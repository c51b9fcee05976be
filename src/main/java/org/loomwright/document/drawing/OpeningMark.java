package org.loomwright.document.drawing;

import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;

import java.util.List;

/**
 * The marks of what a segment passes through: a grommet is two bars across the loom, a hole one bar, a tube two bars joined by a
 * dashed side, a clip a half ring. Own signs, explained in the legend.
 */
final class OpeningMark {

    private static final double BEYOND_MM = 1.1;
    private static final double HALF_GAP_MM = 0.55;

    private OpeningMark() {}

    static double reachMm(double widthMm) {
        return widthMm / 2 + BEYOND_MM;
    }

    static Rectangle bounds(Point at, double widthMm) {
        return Rectangle.around(at, at).grown(reachMm(widthMm));
    }

    static void draw(Pen pen, OpeningKind kind, Point at, Straight on, double widthMm) {
        double length = on.lengthMm();
        double ux = (on.to().xMm() - on.from().xMm()) / length;
        double uy = (on.to().yMm() - on.from().yMm()) / length;
        double reach = reachMm(widthMm);
        switch (kind) {
            case GROMMET -> {
                bar(pen, at, ux, uy, -HALF_GAP_MM, reach, 0.45);
                bar(pen, at, ux, uy, HALF_GAP_MM, reach, 0.45);
            }
            case HOLE -> bar(pen, at, ux, uy, 0, reach, 0.45);
            case TUBE -> {
                bar(pen, at, ux, uy, -reach, reach, 0.3);
                bar(pen, at, ux, uy, reach, reach, 0.3);
                side(pen, at, ux, uy, reach, 1);
                side(pen, at, ux, uy, reach, -1);
            }
            case CLIP ->
                    pen.add(
                            new Shape.Area(
                                    List.of(
                                            off(at, ux, uy, -reach * 0.8, reach),
                                            off(at, ux, uy, reach * 0.8, reach),
                                            off(at, ux, uy, 0, widthMm / 2)),
                                    Ink.BLACK,
                                    Stroke.full(Ink.BLACK, 0.15)));
        }
    }

    private static Point off(Point at, double ux, double uy, double along, double across) {
        return new Point(at.xMm() + ux * along - uy * across, at.yMm() + uy * along + ux * across);
    }

    private static void bar(
            Pen pen, Point at, double ux, double uy, double along, double reach, double width) {
        pen.line(
                List.of(off(at, ux, uy, along, -reach), off(at, ux, uy, along, reach)),
                Ink.BLACK,
                width);
    }

    private static void side(Pen pen, Point at, double ux, double uy, double reach, int side) {
        pen.line(
                List.of(
                        off(at, ux, uy, -reach, side * reach),
                        off(at, ux, uy, reach, side * reach)),
                Ink.BLACK,
                0.2);
    }
}
