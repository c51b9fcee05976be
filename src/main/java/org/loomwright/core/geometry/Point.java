package org.loomwright.core.geometry;

/**
 * A point of the plane, in millimetres.
 *
 * <p>Immutable and thread-safe. Both coordinates are finite; equality is exact, nearness is a matter for
 * {@link Tolerance}.
 *
 * @param xMm distance to the right of the origin
 * @param yMm distance above the origin
 */
public record Point(double xMm, double yMm) {

    /** The point where both axes meet. */
    public static final Point ORIGIN = new Point(0, 0);

    public Point {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
            throw new IllegalArgumentException(
                    "coordinates must be finite, not (" + xMm + ", " + yMm + ")");
        }
    }

    /**
     * @param other the other point
     * @return the straight distance in millimetres, without overflow on the way
     */
    public double distanceToMm(Point other) {
        return StrictMath.hypot(xMm - other.xMm, yMm - other.yMm);
    }
}
