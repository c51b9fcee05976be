package org.loomwright.document.drawing;

import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;
import org.loomwright.core.layout.LoomLayout;
import org.loomwright.core.layout.LoomLayout.Manner;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;

import java.util.List;

/** Frame, legend, scale bar, name and foot line. */
final class TitleBlock {

    private static final int[] BARS_MM = {
        1_000_000, 500_000, 200_000, 100_000, 50_000, 20_000, 10_000, 5000, 2000, 1000, 500, 200,
        100
    };
    private static final double LONGEST_BAR_MM = 75;
    private static final double TEXT_MM = 2.3;

    /** The longest line of the legend with its sample. */
    private static final double LEGEND_MM = 54;

    private final Sheet sheet;
    private final LoomLayout layout;
    private final boolean compared;
    private final Pen pen;
    private final int unnamed;

    TitleBlock(Sheet sheet, LoomPicture picture, boolean compared) {
        this.sheet = sheet;
        this.layout = picture.layout();
        this.unnamed = picture.unnamed();
        this.compared = compared;
        this.pen = picture.pen();
    }

    void draw(Rectangle box) {
        pen.frame(
                new Rectangle(
                        box.leftMm(), box.leftMm(), box.rightMm(), sheet.heightMm() - box.leftMm()),
                0.6);
        pen.frame(box, 0.4);
        double third = box.widthMm() / 3;
        vertical(box, box.leftMm() + third);
        vertical(box, box.leftMm() + 2 * third);
        drawLegend(box.leftMm() + 4, box.topMm() + 5, third);
        drawScale(box.leftMm() + third + 4, box.topMm() + 5);
        drawName(box.leftMm() + 2 * third + 4, box.topMm() + 6, third - 8);
    }

    private void vertical(Rectangle box, double xMm) {
        pen.line(
                List.of(new Point(xMm, box.topMm()), new Point(xMm, box.bottomMm())),
                Ink.BLACK,
                0.3);
    }

    private void drawLegend(double xMm, double topMm, double widthMm) {
        double y = topMm;
        for (Status status : compared ? Status.values() : new Status[] {Status.UNCHANGED}) {
            LineLook.draw(
                    pen, List.of(new Point(xMm, y - 0.8), new Point(xMm + 10, y - 0.8)), 2, status);
            pen.text(
                    compared ? status.words() : "segment, thick as covered",
                    xMm + 14,
                    y,
                    TEXT_MM,
                    false);
            y += 5;
        }
        DatumMark.draw(pen, new Point(xMm + 5, topMm + 16.5));
        pen.text("datum", xMm + 14, topMm + 17.3, TEXT_MM, false);
        drawOpenings(xMm + Math.max(widthMm * 0.55, LEGEND_MM), topMm);
    }

    private void drawOpenings(double xMm, double topMm) {
        double y = topMm;
        for (OpeningKind kind : OpeningKind.values()) {
            Straight on = new Straight(new Point(xMm, y - 0.8), new Point(xMm + 10, y - 0.8));
            LineLook.draw(pen, List.of(on.from(), on.to()), 1.2, Status.UNCHANGED);
            OpeningMark.draw(pen, kind, on.at(0.5), on, 1.2);
            pen.text(kind.words(), xMm + 14, y, TEXT_MM, false);
            y += 5.5;
        }
    }

    private void drawScale(double xMm, double topMm) {
        pen.text("Scale " + layout.scale(), xMm, topMm + 1, 3.4, true);
        int bar = barMm();
        double drawn = bar * 10.0 / layout.scale().tenths();
        double y = topMm + 8;
        int parts = 5;
        for (int i = 0; i < parts; i++) {
            List<Point> part =
                    List.of(
                            new Point(xMm + drawn * i / parts, y),
                            new Point(xMm + drawn * (i + 1) / parts, y));
            LineLook.draw(pen, part, 1.2, i % 2 == 0 ? Status.NEW : Status.UNCHANGED);
        }
        for (int i = 0; i <= parts; i++) {
            pen.text(
                    i == parts ? bar + " mm" : Integer.toString(bar * i / parts),
                    xMm + drawn * i / parts,
                    y - 1.6,
                    2,
                    false,
                    Anchor.MIDDLE,
                    Ink.BLACK);
        }
        pen.text("Figures are millimetres along the loom. " + proportions(), xMm, y + 5, 2, false);
        pen.text(
                "Tails are not to scale: measured from the node to the terminal's tip.",
                xMm,
                y + 8.5,
                2,
                false);
        pen.text(
                "Branches turn on paper to fit the sheet, not on the vehicle.",
                xMm,
                y + 12,
                2,
                false);
    }

    private String proportions() {
        return layout.manner() == Manner.TIDY
                ? "Segments to true proportions."
                : "Segments to true proportions, fanned.";
    }

    private int barMm() {
        for (int bar : BARS_MM) {
            if (bar * 10.0 / layout.scale().tenths() <= LONGEST_BAR_MM) {
                return bar;
            }
        }
        return 50;
    }

    private void drawName(double xMm, double topMm, double widthMm) {
        fitted(sheet.title(), xMm, topMm, 4.4, true, widthMm);
        fitted(
                compared ? "Amended loom beside stock" : "Loom as recorded",
                xMm,
                topMm + 5.5,
                2.8,
                false,
                widthMm);
        fitted(sheet.footer(), xMm, topMm + 10.5, 2.2, false, widthMm);
        fitted(
                "Disconnect the battery before work on the vehicle. Local codes and qualified"
                        + " practice come first.",
                xMm,
                topMm + 15,
                2,
                false,
                widthMm);
        fitted("A planning drawing, not a clearance.", xMm, topMm + 18.5, 2, false, widthMm);
        if (unnamed > 0) {
            String count =
                    unnamed + (unnamed == 1 ? " name finds" : " names find") + " no room here";
            fitted(count + ": take a larger sheet.", xMm, topMm + 22, 2, true, widthMm);
        }
    }

    /** Text made smaller until it fits the width. */
    private void fitted(
            String text, double xMm, double yMm, double sizeMm, boolean bold, double widthMm) {
        double wanted = Pen.widthMm(text, sizeMm, bold);
        double size = wanted <= widthMm ? sizeMm : sizeMm * widthMm / wanted;
        pen.text(text, xMm, yMm, size, bold);
    }
}
