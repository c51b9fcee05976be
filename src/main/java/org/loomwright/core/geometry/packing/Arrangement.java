package org.loomwright.core.geometry.packing;

/**
 * One arrangement met by the search: the vector of the {@link OverlapEnergy} and the radius that ranks it among
 * arrangements of the same pressure.
 */
final class Arrangement {

    private static final double NOTICEABLE = 1e-7;

    private final double[] vector;
    private final double radius;

    Arrangement(double[] vector, double radius) {
        this.vector = vector;
        this.radius = radius;
    }

    /** A copy, free to change. */
    double[] vector() {
        return vector.clone();
    }

    /** Pressed or settled, in units. */
    double radius() {
        return radius;
    }

    /** The radius another one must beat to count as tighter. */
    double radiusToBeat() {
        return radius * (1 - NOTICEABLE);
    }

    boolean isTighterThan(Arrangement other) {
        return radius < other.radiusToBeat();
    }
}
