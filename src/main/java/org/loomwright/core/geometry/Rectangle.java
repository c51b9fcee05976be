package org.loomwright.core.geometry;

/**
 * An upright rectangle. Immutable and thread-safe.
 *
 * @param leftMm smallest x
 * @param topMm smallest y
 * @param rightMm largest x
 * @param bottomMm largest y
 */
public record Rectangle(double leftMm, double topMm, double rightMm, double bottomMm) {

    public Rectangle {
        if (!(rightMm >= leftMm) || !(bottomMm >= topMm)) {
            throw new IllegalArgumentException(
                    "a rectangle's far sides come after its near ones: %s to %s, %s to %s"
                            .formatted(leftMm, rightMm, topMm, bottomMm));
        }
    }

    /** @return the smallest rectangle round both points */
    public static Rectangle around(Point one, Point other) {
        return new Rectangle(
                Math.min(one.xMm(), other.xMm()),
                Math.min(one.yMm(), other.yMm()),
                Math.max(one.xMm(), other.xMm()),
                Math.max(one.yMm(), other.yMm()));
    }

    /** @return its width in millimetres */
    public double widthMm() {
        return rightMm - leftMm;
    }

    /** @return its height in millimetres */
    public double heightMm() {
        return bottomMm - topMm;
    }

    /** @return the smallest rectangle round both */
    public Rectangle with(Rectangle other) {
        return new Rectangle(
                Math.min(leftMm, other.leftMm),
                Math.min(topMm, other.topMm),
                Math.max(rightMm, other.rightMm),
                Math.max(bottomMm, other.bottomMm));
    }

    /**
     * @param byMm how far every side moves out
     * @return the larger rectangle
     */
    public Rectangle grown(double byMm) {
        return new Rectangle(leftMm - byMm, topMm - byMm, rightMm + byMm, bottomMm + byMm);
    }

    /** @return whether the two have more than an edge in common */
    public boolean overlaps(Rectangle other) {
        return leftMm < other.rightMm
                && other.leftMm < rightMm
                && topMm < other.bottomMm
                && other.topMm < bottomMm;
    }

    /** @return whether the other lies wholly inside */
    public boolean contains(Rectangle other) {
        return leftMm <= other.leftMm
                && topMm <= other.topMm
                && rightMm >= other.rightMm
                && bottomMm >= other.bottomMm;
    }

    /** @return whether the point lies inside or on the edge */
    public boolean contains(Point point) {
        return leftMm <= point.xMm()
                && rightMm >= point.xMm()
                && topMm <= point.yMm()
                && bottomMm >= point.yMm();
    }

    /** @return whether any part of the line lies inside */
    public boolean isMetBy(Straight line) {
        if (!overlaps(around(line.from(), line.to()).grown(Tolerance.LENGTH_MM))) {
            return false;
        }
        Point topLeft = new Point(leftMm, topMm);
        Point bottomRight = new Point(rightMm, bottomMm);
        return contains(line.from())
                || contains(line.to())
                || new Straight(topLeft, bottomRight).distanceToMm(line) == 0
                || new Straight(new Point(leftMm, bottomMm), new Point(rightMm, topMm))
                                .distanceToMm(line)
                        == 0;
    }
}
