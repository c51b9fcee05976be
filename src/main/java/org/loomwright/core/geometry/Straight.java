package org.loomwright.core.geometry;

/**
 * A straight line between two points, both included. The points may be the same.
 *
 * <p>Immutable and thread-safe.
 *
 * @param from its first point
 * @param to its last point
 */
public record Straight(Point from, Point to) {

    /** @return its length in millimetres */
    public double lengthMm() {
        return from.distanceToMm(to);
    }

    /**
     * @param share 0 for the first point, 1 for the last
     * @return the point there
     */
    public Point at(double share) {
        return new Point(
                from.xMm() + share * (to.xMm() - from.xMm()),
                from.yMm() + share * (to.yMm() - from.yMm()));
    }

    /**
     * @param point any point
     * @return its distance in millimetres from the nearest point of this line
     */
    public double distanceToMm(Point point) {
        double dx = to.xMm() - from.xMm();
        double dy = to.yMm() - from.yMm();
        double square = dx * dx + dy * dy;
        if (square == 0) {
            return from.distanceToMm(point);
        }
        double along = ((point.xMm() - from.xMm()) * dx + (point.yMm() - from.yMm()) * dy) / square;
        return at(Math.clamp(along, 0, 1)).distanceToMm(point);
    }

    /**
     * @param other another line
     * @return the distance between the two in millimetres, 0 when they touch or cross
     */
    public double distanceToMm(Straight other) {
        if (crosses(other)) {
            return 0;
        }
        double ends = Math.min(distanceToMm(other.from), distanceToMm(other.to));
        return Math.min(ends, Math.min(other.distanceToMm(from), other.distanceToMm(to)));
    }

    /** Whether each line's ends lie strictly on both sides of the other. */
    private boolean crosses(Straight other) {
        return around(this).overlaps(around(other))
                && turn(from, to, other.from) * turn(from, to, other.to) < 0
                && turn(other.from, other.to, from) * turn(other.from, other.to, to) < 0;
    }

    /** Lines in one row get turns that are rounding noise; only their rectangles tell that they do not meet. */
    private static Rectangle around(Straight line) {
        return Rectangle.around(line.from, line.to).grown(Tolerance.LENGTH_MM);
    }

    private static double turn(Point a, Point b, Point c) {
        return Math.signum(
                (b.xMm() - a.xMm()) * (c.yMm() - a.yMm())
                        - (b.yMm() - a.yMm()) * (c.xMm() - a.xMm()));
    }
}
