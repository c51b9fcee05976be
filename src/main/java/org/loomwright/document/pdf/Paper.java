package org.loomwright.document.pdf;

/**
 * A size of sheet with its margins.
 *
 * @param widthMm width
 * @param heightMm height
 */
public record Paper(double widthMm, double heightMm) {

    /** A4 upright. */
    public static final Paper A4 = new Paper(210, 297);

    /** A4 on its side. */
    public static final Paper A4_LANDSCAPE = new Paper(297, 210);

    /** Points in a millimetre, by the definitions of point and inch. */
    public static final double POINTS_PER_MM = 72 / 25.4;

    private static final double LEFT_MM = 20;
    private static final double RIGHT_MM = 14;
    private static final double HEAD_MM = 25;
    private static final double FOOT_MM = 22;

    /** @return width of the sheet */
    public double widthPt() {
        return widthMm * POINTS_PER_MM;
    }

    /** @return height of the sheet */
    public double heightPt() {
        return heightMm * POINTS_PER_MM;
    }

    /** @return where the body begins, with room for the holes of a binder */
    public double leftPt() {
        return LEFT_MM * POINTS_PER_MM;
    }

    /** @return where the body ends */
    public double rightPt() {
        return widthPt() - RIGHT_MM * POINTS_PER_MM;
    }

    /** @return where the body begins, below the page's head */
    public double topPt() {
        return HEAD_MM * POINTS_PER_MM;
    }

    /** @return where the body ends, above the page's foot */
    public double bottomPt() {
        return heightPt() - FOOT_MM * POINTS_PER_MM;
    }

    /** @return width of the body */
    public double bodyWidthPt() {
        return rightPt() - leftPt();
    }

    /** @return height of the body */
    public double bodyHeightPt() {
        return bottomPt() - topPt();
    }
}
