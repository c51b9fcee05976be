package org.loomwright.document.pdf;

import org.jspecify.annotations.Nullable;
import org.loomwright.document.scene.Shape.Ink;
import org.openpdf.text.pdf.PdfContentByte;

import java.awt.Color;

/** One page to draw on: points from its top left corner, y down. */
public final class Canvas {

    private static final float[] DOTS = {0f, 2.4f};

    private final PdfContentByte content;
    private final double heightPt;

    Canvas(PdfContentByte content, double heightPt) {
        this.content = content;
        this.heightPt = heightPt;
    }

    PdfContentByte content() {
        return content;
    }

    float up(double yPt) {
        return (float) (heightPt - yPt);
    }

    static Color colour(Ink ink) {
        return Color.decode(ink.hex());
    }

    /** Writes one line that starts at a point of its base line. */
    public void text(String text, TextStyle style, double xPt, double yPt) {
        content.setColorFill(colour(style.ink()));
        content.beginText();
        content.setFontAndSize(style.face().font(), (float) style.sizePt());
        content.setCharacterSpacing((float) style.trackingPt());
        content.setTextMatrix((float) xPt, up(yPt));
        content.showText(style.face().printable(text));
        content.setCharacterSpacing(0);
        content.endText();
    }

    /** Writes one line that ends at a point of its base line. */
    public void textEndingAt(String text, TextStyle style, double xPt, double yPt) {
        text(text, style, xPt - style.widthOf(text) + style.trackingPt(), yPt);
    }

    /** Writes one line centred on a point of its base line. */
    public void textCentredOn(String text, TextStyle style, double xPt, double yPt) {
        text(text, style, xPt - style.widthOf(text) / 2, yPt);
    }

    /** Draws a straight black line. */
    public void rule(double fromX, double fromY, double toX, double toY, double widthPt) {
        content.saveState();
        content.setColorStroke(colour(Ink.BLACK));
        content.setLineWidth((float) widthPt);
        content.moveTo((float) fromX, up(fromY));
        content.lineTo((float) toX, up(toY));
        content.stroke();
        content.restoreState();
    }

    /** Draws dots along a level line, to write on. */
    public void dotted(double fromX, double toX, double yPt) {
        content.saveState();
        content.setLineCap(PdfContentByte.LINE_CAP_ROUND);
        content.setLineDash(DOTS, 0);
        content.setLineWidth(0.7f);
        content.moveTo((float) fromX, up(yPt));
        content.lineTo((float) toX, up(yPt));
        content.stroke();
        content.restoreState();
    }

    /**
     * Draws a rectangle by its top left corner.
     *
     * @param fill its colour, or null for none
     * @param outlinePt width of its black outline, 0 for none
     */
    public void box(
            double xPt,
            double yPt,
            double widthPt,
            double boxHeightPt,
            @Nullable Ink fill,
            double outlinePt) {
        if (fill != null) {
            content.setColorFill(colour(fill));
            content.rectangle(
                    (float) xPt, up(yPt + boxHeightPt), (float) widthPt, (float) boxHeightPt);
            content.fill();
        }
        if (outlinePt > 0) {
            content.setColorStroke(colour(Ink.BLACK));
            content.setLineWidth((float) outlinePt);
            content.rectangle(
                    (float) xPt, up(yPt + boxHeightPt), (float) widthPt, (float) boxHeightPt);
            content.stroke();
        }
    }
}
