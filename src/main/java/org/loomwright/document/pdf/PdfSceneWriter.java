package org.loomwright.document.pdf;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Point;
import org.loomwright.document.scene.Scene;
import org.loomwright.document.scene.Shape;
import org.openpdf.text.pdf.PdfContentByte;

import java.util.List;

/** Draws a scene on a page, at any scale; at scale 1 a millimetre of the scene is a millimetre of the paper. */
public final class PdfSceneWriter {

    private final Canvas canvas;
    private final PdfContentByte content;
    private final double xPt;
    private final double yPt;
    private final double pointsPerMm;

    private PdfSceneWriter(Canvas canvas, double xPt, double yPt, double scale) {
        this.canvas = canvas;
        this.content = canvas.content();
        this.xPt = xPt;
        this.yPt = yPt;
        this.pointsPerMm = Paper.POINTS_PER_MM * scale;
    }

    /**
     * @param canvas the page
     * @param scene what to draw
     * @param xPt left edge of the scene's sheet
     * @param yPt top edge of the scene's sheet
     * @param scale paper millimetres for one millimetre of the scene
     */
    public static void draw(Canvas canvas, Scene scene, double xPt, double yPt, double scale) {
        PdfSceneWriter writer = new PdfSceneWriter(canvas, xPt, yPt, scale);
        canvas.content().saveState();
        canvas.content().setLineCap(PdfContentByte.LINE_CAP_ROUND);
        canvas.content().setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
        scene.shapes().forEach(writer::draw);
        canvas.content().restoreState();
    }

    /**
     * @param scene a picture
     * @param widthPt room to the right
     * @param heightPt room downwards
     * @return the largest scale at which it fits, at most 1
     */
    public static double scaleToFit(Scene scene, double widthPt, double heightPt) {
        return Math.min(
                1,
                Math.min(
                        widthPt / (scene.widthMm() * Paper.POINTS_PER_MM),
                        heightPt / (scene.heightMm() * Paper.POINTS_PER_MM)));
    }

    private void draw(Shape shape) {
        switch (shape) {
            case Shape.Line line -> {
                path(line.points());
                content.setLineDash(0);
                stroke(line.stroke());
                content.stroke();
            }
            case Shape.Area area -> {
                path(area.points());
                content.closePath();
                paint(area.fill(), area.stroke());
            }
            case Shape.Disc disc -> {
                content.circle(
                        x(disc.centre()),
                        y(disc.centre()),
                        (float) (disc.radiusMm() * pointsPerMm));
                paint(disc.fill(), disc.stroke());
            }
            case Shape.Box box -> {
                double height = box.heightMm() * pointsPerMm;
                content.rectangle(
                        x(box.corner()),
                        (float) (y(box.corner()) - height),
                        (float) (box.widthMm() * pointsPerMm),
                        (float) height);
                paint(box.fill(), box.stroke());
            }
            case Shape.Label label -> label(label);
        }
    }

    private float x(Point point) {
        return (float) (xPt + point.xMm() * pointsPerMm);
    }

    private float y(Point point) {
        return canvas.up(yPt + point.yMm() * pointsPerMm);
    }

    private void path(List<Point> points) {
        content.moveTo(x(points.getFirst()), y(points.getFirst()));
        points.stream().skip(1).forEach(point -> content.lineTo(x(point), y(point)));
    }

    private void paint(Shape.@Nullable Ink fill, Shape.@Nullable Stroke stroke) {
        if (fill != null) {
            content.setColorFill(Canvas.colour(fill));
        }
        if (stroke != null) {
            stroke(stroke);
        }
        if (fill != null && stroke != null) {
            content.fillStroke();
        } else if (fill != null) {
            content.fill();
        } else if (stroke != null) {
            content.stroke();
        } else {
            content.newPath();
        }
    }

    private void stroke(Shape.Stroke stroke) {
        content.setColorStroke(Canvas.colour(stroke.ink()));
        content.setLineWidth((float) (stroke.widthMm() * pointsPerMm));
        float[] dashes = new float[stroke.dashMm().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = (float) (stroke.dashMm().get(i) * pointsPerMm);
        }
        content.setLineDash(dashes, 0);
    }

    private void label(Shape.Label label) {
        Face face = label.bold() ? Face.BOLD : Face.REGULAR;
        double sizePt = label.sizeMm() * pointsPerMm;
        String text = face.printable(label.text());
        double before =
                switch (label.anchor()) {
                    case START -> 0;
                    case MIDDLE -> face.widthOf(text, sizePt) / 2;
                    case END -> face.widthOf(text, sizePt);
                };
        double turn = Math.toRadians(-label.turnedDegrees());
        float cos = (float) Math.cos(turn);
        float sin = (float) Math.sin(turn);
        content.setColorFill(Canvas.colour(label.ink()));
        content.beginText();
        content.setFontAndSize(face.font(), (float) sizePt);
        content.setTextMatrix(
                cos,
                sin,
                -sin,
                cos,
                (float) (x(label.at()) - before * cos),
                (float) (y(label.at()) - before * sin));
        content.showText(text);
        content.endText();
    }
}
