package org.loomwright.core.geometry.packing;

import org.loomwright.core.geometry.Point;

import java.util.List;

/**
 * Circles packed into a container centred on the origin.
 *
 * <p>No two circles overlap and none sticks out, to within {@link org.loomwright.core.geometry.Tolerance#LENGTH_MM}. No
 * circles at all give a radius of zero and no centres. Immutable and thread-safe.
 *
 * @param radiusMm the radius of the container found
 * @param centres the centres, in the order in which the radii were given
 * @param lowerBoundMm a radius no container can be below, proved
 * @param certainty whether the container found is known to be smallest
 */
public record PackedCircles(
        double radiusMm, List<Point> centres, double lowerBoundMm, Certainty certainty) {

    public PackedCircles {
        centres = List.copyOf(centres);
        if (!(lowerBoundMm <= radiusMm)) {
            throw new IllegalArgumentException(
                    "a container of radius "
                            + radiusMm
                            + " mm is below the lower bound "
                            + lowerBoundMm
                            + " mm");
        }
    }

    /** @return the diameter of the container in millimetres */
    public double diameterMm() {
        return 2 * radiusMm;
    }
}
