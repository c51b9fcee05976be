package org.loomwright.document.drawing;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;
import org.loomwright.core.layout.label.TextWidth;
import org.loomwright.core.quantity.Length;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Puts shapes on a sheet, in drawing order. */
final class Pen {

    /** Oxide red, dark enough to stay apart from paper in black and white. */
    static final Ink ACCENT = new Ink("#8c2f1b");

    static final Ink GREY = new Ink("#6b6b6b");
    static final double FINE_MM = 0.18;

    private final List<Shape> shapes = new ArrayList<>();

    void line(List<Point> points, Ink ink, double widthMm) {
        shapes.add(new Shape.Line(points, Stroke.full(ink, widthMm)));
    }

    void dashed(List<Point> points, Ink ink, double widthMm, double dashMm) {
        shapes.add(new Shape.Line(points, new Stroke(ink, widthMm, List.of(dashMm, dashMm))));
    }

    void line(Straight line, Ink ink, double widthMm) {
        line(List.of(line.from(), line.to()), ink, widthMm);
    }

    void add(Shape shape) {
        shapes.add(shape);
    }

    void text(String text, double xMm, double yMm, double sizeMm, boolean bold) {
        text(text, xMm, yMm, sizeMm, bold, Anchor.START, Ink.BLACK);
    }

    void text(
            String text,
            double xMm,
            double yMm,
            double sizeMm,
            boolean bold,
            Anchor anchor,
            Ink ink) {
        shapes.add(new Shape.Label(text, new Point(xMm, yMm), sizeMm, anchor, 0, bold, ink));
    }

    void frame(Rectangle box, double widthMm) {
        shapes.add(
                new Shape.Box(
                        new Point(box.leftMm(), box.topMm()),
                        box.widthMm(),
                        box.heightMm(),
                        null,
                        Stroke.full(Ink.BLACK, widthMm)));
    }

    List<Shape> shapes() {
        return shapes;
    }

    static double widthMm(String text, double sizeMm, boolean bold) {
        return TextWidth.of(text, length(sizeMm), bold).toDoubleMillimetres();
    }

    static Length length(double mm) {
        return Length.roundedFromMillimetres(mm, RoundingMode.CEILING);
    }
}
