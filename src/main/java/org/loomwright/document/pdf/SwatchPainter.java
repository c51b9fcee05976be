package org.loomwright.document.pdf;

import org.loomwright.document.pdf.Cell.Swatch;

/** Paints a wire's colours as a short piece of wire lying on the line of text. */
final class SwatchPainter {

    private static final double OUTLINE_PT = 0.5;
    private static final double TRACER_LINE_PT = 0.15;
    private static final double TRACER_SHARE = 0.38;
    private static final double HEIGHT_SHARE = 1.06;
    private static final double DROP_SHARE = 0.16;

    private SwatchPainter() {}

    static void paint(Canvas canvas, Swatch swatch, double xPt, double baseLine, double sizePt) {
        double height = sizePt * HEIGHT_SHARE;
        double top = baseLine + sizePt * DROP_SHARE - height;
        canvas.box(xPt, top, Cell.SWATCH_WIDTH_PT, height, swatch.body(), 0);
        if (swatch.tracer() != null) {
            double stripe = height * TRACER_SHARE;
            double stripeTop = top + (height - stripe) / 2;
            canvas.box(xPt, stripeTop, Cell.SWATCH_WIDTH_PT, stripe, swatch.tracer(), 0);
            canvas.rule(xPt, stripeTop, xPt + Cell.SWATCH_WIDTH_PT, stripeTop, TRACER_LINE_PT);
            canvas.rule(
                    xPt,
                    stripeTop + stripe,
                    xPt + Cell.SWATCH_WIDTH_PT,
                    stripeTop + stripe,
                    TRACER_LINE_PT);
        }
        canvas.box(xPt, top, Cell.SWATCH_WIDTH_PT, height, null, OUTLINE_PT);
    }
}
