package org.loomwright.document.drawing;

import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.bundle.SegmentBundle;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape.Anchor;
import org.loomwright.document.scene.Shape.Ink;

import java.util.List;

/**
 * The cut through one segment, enlarged: every wire in its body colour with its tracer as a stripe and its letters, the three
 * diameters as rings with their figures, and a list of the wires by colour and size. Before beside after where there is a before.
 */
public final class CrossSectionDrawing {

    private static final double WIDTH_MM = 90;
    private static final double MARGIN_MM = 5;
    private static final double HEAD_MM = 14;
    private static final double CUT_MM = 62;
    private static final double ROW_MM = 3.4;

    /** No cut is enlarged more than this: two wires need not fill a plate. */
    private static final double MOST_ENLARGED = 8;

    private final Catalogue catalogue;
    private final Pen pen = new Pen();

    private CrossSectionDrawing(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * @param bundle the segment's bundle
     * @param catalogue the tables that its wires refer to
     * @return the cut through the segment
     */
    public static Scene of(SegmentBundle bundle, Catalogue catalogue) {
        CrossSectionDrawing drawing = new CrossSectionDrawing(catalogue);
        double times = times(List.of(bundle));
        double height = height(List.of(bundle));
        drawing.drawPanel(bundle, "Segment " + bundle.segment().id(), 0, times);
        drawing.pen.frame(new Rectangle(1, 1, WIDTH_MM - 1, height - 1), 0.4);
        return new Scene(
                "Cut through segment " + bundle.segment().id(),
                description(bundle),
                WIDTH_MM,
                height,
                drawing.pen.shapes());
    }

    /**
     * @param change what the additions do to the segment
     * @param catalogue the tables that its wires refer to
     * @return the cut before beside the cut after, at the same enlargement; only the latter for a new segment
     */
    public static Scene of(SegmentChange change, Catalogue catalogue) {
        SegmentBundle before = change.before();
        if (before == null) {
            return of(change.after(), catalogue);
        }
        CrossSectionDrawing drawing = new CrossSectionDrawing(catalogue);
        List<SegmentBundle> both = List.of(before, change.after());
        double times = times(both);
        double height = height(both);
        String name = "Segment " + change.segment();
        drawing.drawPanel(before, name + ", before", 0, times);
        drawing.drawPanel(change.after(), name + ", after", WIDTH_MM, times);
        drawing.pen.frame(new Rectangle(1, 1, 2 * WIDTH_MM - 1, height - 1), 0.4);
        drawing.pen.line(
                List.of(new Point(WIDTH_MM, 1), new Point(WIDTH_MM, height - 1)), Ink.BLACK, 0.25);
        return new Scene(
                "Cut through segment " + change.segment() + " before and after",
                "Before: " + description(before) + " After: " + description(change.after()),
                2 * WIDTH_MM,
                height,
                drawing.pen.shapes());
    }

    private static String description(SegmentBundle bundle) {
        return "%d wires, tight %s, laid %s, covered %s."
                .formatted(
                        bundle.counts().total(), bundle.tight(), bundle.laid(), bundle.covered());
    }

    private static double times(List<SegmentBundle> bundles) {
        double largest =
                bundles.stream()
                        .mapToDouble(bundle -> bundle.covered().toDoubleMillimetres())
                        .max()
                        .orElse(0);
        return largest == 0 ? 1 : Math.min(MOST_ENLARGED, CUT_MM / largest);
    }

    private static double height(List<SegmentBundle> bundles) {
        int rows =
                bundles.stream()
                        .mapToInt(bundle -> (bundle.counts().byClass().size() + 2) / 3)
                        .max()
                        .orElse(0);
        return HEAD_MM + CUT_MM + 18 + rows * ROW_MM + MARGIN_MM;
    }

    private void drawPanel(SegmentBundle bundle, String heading, double leftMm, double times) {
        double left = leftMm + MARGIN_MM;
        pen.text(heading, left, 8, 4, true);
        pen.text(
                "%d wires, drawn %s times".formatted(bundle.counts().total(), rounded(times)),
                left,
                12,
                2.4,
                false);
        Point centre = new Point(leftMm + WIDTH_MM / 2, HEAD_MM + 2 + CUT_MM / 2);
        new BundleCut(bundle, catalogue, pen).draw(centre, times);
        drawDiameters(bundle, left, HEAD_MM + CUT_MM + 7);
        drawList(bundle, left, HEAD_MM + CUT_MM + 17);
    }

    private void drawDiameters(SegmentBundle bundle, double leftMm, double topMm) {
        double third = (WIDTH_MM - 2 * MARGIN_MM) / 3;
        String[] names = {"tight (dotted)", "laid (dashed)", "covered (full)"};
        String[] figures = {
            rounded(bundle.tight().toDoubleMillimetres()),
            rounded(bundle.laid().toDoubleMillimetres()),
            rounded(bundle.covered().toDoubleMillimetres())
        };
        for (int i = 0; i < names.length; i++) {
            double x = leftMm + third * (i + 0.5);
            pen.text(names[i], x, topMm, 2.2, false, Anchor.MIDDLE, Ink.BLACK);
            pen.text(
                    "\u00d8 " + figures[i] + " mm",
                    x,
                    topMm + 4,
                    3.2,
                    true,
                    Anchor.MIDDLE,
                    Ink.BLACK);
        }
    }

    private void drawList(SegmentBundle bundle, double leftMm, double topMm) {
        double third = (WIDTH_MM - 2 * MARGIN_MM) / 3;
        int[] at = {0};
        bundle.counts()
                .byClass()
                .forEach(
                        (wireClass, count) -> {
                            pen.text(
                                    "%d \u00d7 %s  %s"
                                            .formatted(
                                                    count,
                                                    wireClass.colour().letters(),
                                                    wireClass.size()),
                                    leftMm + third * (at[0] % 3),
                                    topMm + ROW_MM * (at[0] / 3),
                                    2.3,
                                    false);
                            at[0]++;
                        });
    }

    /** One decimal, rounded up: a diameter is never understated. */
    private static String rounded(double value) {
        return java.math.BigDecimal.valueOf(value)
                .setScale(1, java.math.RoundingMode.CEILING)
                .toPlainString();
    }
}
