package org.loomwright.core.geometry.packing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The radii as the search sees them: largest first, the median radius as unit, rounded to a fine binary grid.
 *
 * <p>Sorting makes the answer independent of the input order, the unit makes it independent of the scale, and the grid
 * (2^-40 of the unit) keeps the rounding of the division from steering the search. The true radii are used again when
 * the container is measured.
 */
final class CanonicalRadii {

    private static final double GRID = 0x1p40;

    private final int[] order;
    private final double[] sortedMm;
    private final double[] scaled;
    private final double unitMm;

    CanonicalRadii(double[] radiiMm) {
        int count = radiiMm.length;
        order =
                IntStream.range(0, count)
                        .boxed()
                        .sorted(
                                Comparator.<Integer>comparingDouble(i -> -radiiMm[i])
                                        .thenComparing(i -> i))
                        .mapToInt(Integer::intValue)
                        .toArray();
        sortedMm = Arrays.stream(order).mapToDouble(i -> radiiMm[i]).toArray();
        unitMm = unit(sortedMm);
        scaled =
                Arrays.stream(sortedMm)
                        .map(radius -> Math.rint(radius / unitMm * GRID) / GRID)
                        .toArray();
    }

    /** The median, but not so small that four large circles would look endlessly far apart. */
    private static double unit(double[] sorted) {
        int count = sorted.length;
        return count < 4 ? 1 : Math.max(sorted[count / 2], sorted[3] / 10);
    }

    int count() {
        return order.length;
    }

    /** Largest first, in millimetres. */
    double[] sortedMm() {
        return sortedMm;
    }

    /** Largest first, in units. */
    double[] scaled() {
        return scaled;
    }

    double unitMm() {
        return unitMm;
    }

    /** Where the circle of that rank stood in the input. */
    int inputIndex(int rank) {
        return order[rank];
    }

    /** A seed that depends on the scaled radii and nothing else. */
    long seed() {
        return Arrays.hashCode(scaled) * 0x9E3779B97F4A7C15L;
    }

    /** Whether all circles are equal. */
    boolean isUniform() {
        return scaled.length == 0 || scaled[0] == scaled[scaled.length - 1];
    }
}
