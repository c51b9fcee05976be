package org.loomwright.core.geometry.packing;

/**
 * One arrangement met by the search: the vector of the {@link OverlapEnergy} and the wall radius it stands for.
 */
final class Arrangement {

    private final double[] vector;
    private final double radius;

    double enthalpy;

    Arrangement(double[] vector, double radius) {
        this.vector = vector;
        this.radius = radius;
    }

    /** A copy, free to change. */
    double[] vector() {
        return vector.clone();
    }

    /** The wall radius foretold or measured, in units. */
    double radius() {
        return radius;
    }

    boolean isTighterThan(Arrangement other) {
        return radius < other.radius - 1e-9 * other.radius;
    }
}
