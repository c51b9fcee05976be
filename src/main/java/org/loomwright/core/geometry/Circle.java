package org.loomwright.core.geometry;

/**
 * A circle of the plane, in millimetres. A radius of zero is a point and allowed.
 *
 * <p>Immutable and thread-safe.
 *
 * @param centre its centre
 * @param radiusMm its radius, finite and not negative
 */
public record Circle(Point centre, double radiusMm) {

    public Circle {
        if (!(radiusMm >= 0) || Double.isInfinite(radiusMm)) {
            throw new IllegalArgumentException(
                    "radius must be finite and not negative, not " + radiusMm);
        }
    }

    /**
     * @param other the other circle
     * @return how deep the two overlap in millimetres; negative is the gap between them
     */
    public double overlapMm(Circle other) {
        return radiusMm + other.radiusMm - centre.distanceToMm(other.centre);
    }

    /**
     * @param inner the circle that should lie inside this one
     * @return how far the inner circle sticks out in millimetres; negative is the room left
     */
    public double escapeMm(Circle inner) {
        return centre.distanceToMm(inner.centre) + inner.radiusMm - radiusMm;
    }

    /**
     * @param other the other circle
     * @return whether they overlap by more than {@link Tolerance#LENGTH_MM}
     */
    public boolean overlaps(Circle other) {
        return overlapMm(other) > Tolerance.LENGTH_MM;
    }

    /**
     * @param inner the circle that should lie inside this one
     * @return whether it does, give or take {@link Tolerance#LENGTH_MM}
     */
    public boolean encloses(Circle inner) {
        return escapeMm(inner) <= Tolerance.LENGTH_MM;
    }
}
