package org.loomwright.core.geometry.packing;

/**
 * A container radius that no packing of the given circles can go below.
 *
 * <p>The largest of five bounds, each proved; all radii sorted largest first, so that {@code r[k-1]} is the k-th largest:
 *
 * <ol>
 *   <li>Area: the circles do not overlap, so R^2 is at least the sum of r^2.
 *   <li>Two circles: the container is at least as wide as both largest side by side, R at least r1 + r2.
 *   <li>Three circles: the exact container of the three largest, see {@link ThreeCircles}.
 *   <li>Angles: shrink the k largest to the k-th radius; their centres keep 2 r apart inside a circle of radius R - r.
 *       For k of 2 to 6 two of them are seen from its middle under at most 2 pi / k, where the farthest they can be
 *       apart is 2 (R - r) sin(pi / k) (not less than R - r, as the angle may reach 60 degrees). Hence R is at least
 *       r (1 + 1 / sin(pi / k)). For k of 8 and 9 the same holds with k - 1 in place of k.
 *   <li>Many circles: the same shrunken circles in Groemer's inequality, k at most (2 / sqrt 3) A + P / 2 + 1, with area
 *       and perimeter of the circle of centres measured in units of 2 r.
 * </ol>
 *
 * <p>Cost: linear after sorting. Source: (1), (2), (4 up to k = 6) own derivation as given; (4 for 8 and 9) U. Pirl,
 * "Der Mindestabstand von n in der Einheitskreisscheibe gelegenen Punkten", 1969; (5) H. Groemer, "Über die
 * Einlagerung von Kreisen in einen konvexen Bereich", 1960.
 */
final class LowerBound {

    private LowerBound() {}

    /** The bound in the unit of the radii, which must be sorted largest first; 0 for none. */
    static double of(double[] sorted) {
        if (sorted.length == 0) {
            return 0;
        }
        double bound = Math.max(sorted[0], area(sorted));
        if (sorted.length >= 2) {
            bound = Math.max(bound, sorted[0] + sorted[1]);
        }
        if (sorted.length >= 3) {
            bound = Math.max(bound, ThreeCircles.containerRadius(sorted[0], sorted[1], sorted[2]));
        }
        for (int k = 4; k <= sorted.length; k++) {
            bound = Math.max(bound, sorted[k - 1] * Math.max(angles(k), groemer(k)));
        }
        return bound;
    }

    private static double area(double[] sorted) {
        double sum = 0;
        for (double radius : sorted) {
            sum += (radius / sorted[0]) * (radius / sorted[0]);
        }
        return sorted[0] * Math.sqrt(sum);
    }

    private static double angles(int k) {
        int parts = k <= 6 ? k : k == 7 ? 6 : Math.min(k, 9) - 1;
        return 1 + 1 / StrictMath.sin(Math.PI / parts);
    }

    /** Solves 2 pi / sqrt 3 * rho^2 + pi * rho + 1 = k for the circle of centres, rho in units of 2 r. */
    private static double groemer(int k) {
        double square = 2 * Math.PI / Math.sqrt(3);
        double rho = (Math.sqrt(Math.PI * Math.PI + 4 * square * (k - 1)) - Math.PI) / (2 * square);
        return 1 + 2 * rho;
    }
}
