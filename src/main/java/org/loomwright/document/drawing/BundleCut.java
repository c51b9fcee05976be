package org.loomwright.document.drawing;

import org.loomwright.core.bundle.BundleView;
import org.loomwright.core.bundle.BundleView.PlacedWire;
import org.loomwright.core.bundle.SegmentBundle;
import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.geometry.Point;
import org.loomwright.document.scene.Shape;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;
import org.loomwright.document.scene.Shape.Stroke;

import java.util.ArrayList;
import java.util.List;

/** The wires of a bundle and the rings round them, about one centre. */
final class BundleCut {

    private static final double OUTLINE_MM = 0.22;

    /** The tracer is drawn as a segment of the circle that begins this share of the radius below the centre. */
    private static final double TRACER = 0.52;

    private static final double MOST_LETTERS_MM = 3.6;
    private static final int ARC_STEPS = 24;

    private final SegmentBundle bundle;
    private final Catalogue catalogue;
    private final Pen pen;

    BundleCut(SegmentBundle bundle, Catalogue catalogue, Pen pen) {
        this.bundle = bundle;
        this.catalogue = catalogue;
        this.pen = pen;
    }

    void draw(Point centre, double times) {
        ring(centre, bundle.covered().toDoubleMillimetres() * times / 2, List.of(), 0.5);
        for (PlacedWire wire : BundleView.of(bundle, catalogue).wires()) {
            Point at =
                    new Point(
                            centre.xMm() + wire.circle().centre().xMm() * times,
                            centre.yMm() + wire.circle().centre().yMm() * times);
            drawWire(wire.wireClass().colour(), at, wire.circle().radiusMm() * times);
        }
        ring(centre, bundle.laid().toDoubleMillimetres() * times / 2, List.of(2.0, 1.0), 0.25);
        ring(centre, bundle.tight().toDoubleMillimetres() * times / 2, List.of(0.4, 0.8), 0.25);
    }

    private void ring(Point centre, double radiusMm, List<Double> dash, double widthMm) {
        if (radiusMm > 0) {
            Stroke stroke = new Stroke(Ink.BLACK, widthMm, dash);
            pen.add(new Shape.Disc(centre, radiusMm, null, stroke));
        }
    }

    private void drawWire(WireColour colour, Point at, double radiusMm) {
        double radius = radiusMm - OUTLINE_MM / 2;
        Ink body = ink(colour.body());
        pen.add(new Shape.Disc(at, radius, body, null));
        if (colour.tracer() != null) {
            pen.add(
                    new Shape.Area(
                            tracer(at, radius), ink(colour.tracer()), Stroke.full(Ink.BLACK, 0.1)));
        }
        pen.add(new Shape.Disc(at, radius, null, Stroke.full(Ink.BLACK, OUTLINE_MM)));
        String letters = colour.letters();
        double wide = Pen.widthMm(letters, 1, true);
        double size = Math.min(MOST_LETTERS_MM, radiusMm * 1.5 / Math.max(wide, 1));
        pen.text(
                letters,
                at.xMm(),
                at.yMm() + size * 0.28,
                size,
                true,
                Anchor.MIDDLE,
                isDark(body) ? Ink.PAPER : Ink.BLACK);
    }

    /** The part of the circle below a level line. */
    private static List<Point> tracer(Point at, double radiusMm) {
        double from = Math.asin(TRACER);
        double to = Math.PI - from;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= ARC_STEPS; i++) {
            double angle = from + (to - from) * i / ARC_STEPS;
            points.add(
                    new Point(
                            at.xMm() + radiusMm * Math.cos(angle),
                            at.yMm() + radiusMm * Math.sin(angle)));
        }
        return points;
    }

    private Ink ink(String letters) {
        return catalogue
                .findColour(letters)
                .map(BaseColour::swatch)
                .map(Ink::new)
                .orElse(Ink.PAPER);
    }

    /**
     * Whether white letters read better than black ones.
     *
     * <p>Source: relative luminance and contrast of Web Content Accessibility Guidelines 2.2, W3C 2023; at a luminance of 0.179 both
     * contrasts are equal.
     */
    static boolean isDark(Ink ink) {
        int rgb = Integer.parseInt(ink.hex().substring(1), 16);
        double luminance =
                0.2126 * linear(rgb >> 16 & 0xff)
                        + 0.7152 * linear(rgb >> 8 & 0xff)
                        + 0.0722 * linear(rgb & 0xff);
        return luminance < 0.179;
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
