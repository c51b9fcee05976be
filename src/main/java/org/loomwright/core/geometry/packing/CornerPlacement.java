package org.loomwright.core.geometry.packing;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * A classical constructive start: largest circle first, each into the free corner nearest the focus.
 *
 * <p>A corner is a position touching two circles already placed. Circles of nearly the same size (within five per cent)
 * are placed as if they had the largest size of their group, so that the open corners of a group can be kept in one
 * queue. Equal circles grow into a hexagonal patch around the focus. Cost: near n log n for few groups. Deterministic.
 *
 * <p>Source: own derivation in the family of W. Wang, H. Wang, G. Dai, H. Wang, "Visualization of large hierarchical
 * data by circle packing", 2006, with all corners kept open instead of the front only.
 */
final class CornerPlacement {

    private static final double GROUP = 0.95;

    private final double[] radii;
    private final double[] xs;
    private final double[] ys;
    private final double[] placedRadii;
    private final CellGrid grid;
    private final PriorityQueue<Corner> corners = new PriorityQueue<>();

    private record Corner(double square, double x, double y) implements Comparable<Corner> {
        @Override
        public int compareTo(Corner other) {
            int bySquare = Double.compare(square, other.square);
            int byX = bySquare != 0 ? bySquare : Double.compare(x, other.x);
            return byX != 0 ? byX : Double.compare(y, other.y);
        }
    }

    private CornerPlacement(double[] sorted) {
        this.radii = sorted;
        this.xs = new double[sorted.length];
        this.ys = new double[sorted.length];
        this.placedRadii = new double[sorted.length];
        double area = Arrays.stream(sorted).map(r -> r * r).sum();
        this.grid = new CellGrid(xs, ys, placedRadii, 1.2 * Math.sqrt(area), sorted[0]);
    }

    /**
     * Arranges at least two circles, sorted largest first.
     *
     * @param right how far the focus lies right of the centre of the first circle, in its radii
     * @param up how far above
     * @return abscissae, then ordinates, with the focus as origin
     */
    static double[] arrange(double[] sorted, double right, double up) {
        CornerPlacement placement = new CornerPlacement(sorted);
        placement.placeFirstTwo(right * sorted[0], up * sorted[0]);
        placement.placeOthers();
        double[] centres = Arrays.copyOf(placement.xs, 2 * sorted.length);
        System.arraycopy(placement.ys, 0, centres, sorted.length, sorted.length);
        return centres;
    }

    private void placeFirstTwo(double right, double up) {
        put(0, -right, -up, radii[0]);
        put(1, radii[0] + radii[1] - right, -up, radii[1]);
    }

    private void put(int circle, double x, double y, double radius) {
        xs[circle] = x;
        ys[circle] = y;
        placedRadii[circle] = radius;
        grid.add(circle);
    }

    private void placeOthers() {
        double group = Double.POSITIVE_INFINITY;
        for (int i = 2; i < radii.length; i++) {
            if (radii[i] < GROUP * group || i == 2) {
                group = radii[i];
                openAllCorners(i, group);
            }
            Corner corner = corners.remove();
            while (!grid.isFree(corner.x, corner.y, group)) {
                corner = corners.remove();
            }
            put(i, corner.x, corner.y, group);
            openCorners(i, group, -1);
        }
    }

    private void openAllCorners(int placed, double radius) {
        corners.clear();
        for (int i = 0; i < placed; i++) {
            openCorners(i, radius, i);
        }
    }

    /** Opens the corners between a circle and its neighbours; only those numbered above {@code after}. */
    private void openCorners(int circle, double radius, int after) {
        for (int j : grid.near(circle, 2 * radius)) {
            if (j > after) {
                openCorner(circle, j, radius);
            }
        }
    }

    private void openCorner(int i, int j, double radius) {
        double dx = xs[j] - xs[i];
        double dy = ys[j] - ys[i];
        double distance = Math.sqrt(dx * dx + dy * dy);
        double fromI = placedRadii[i] + radius;
        double fromJ = placedRadii[j] + radius;
        double along = (distance * distance + fromI * fromI - fromJ * fromJ) / (2 * distance);
        double aside = Math.sqrt(Math.max(0, fromI * fromI - along * along));
        offer(
                xs[i] + (along * dx - aside * dy) / distance,
                ys[i] + (along * dy + aside * dx) / distance);
        offer(
                xs[i] + (along * dx + aside * dy) / distance,
                ys[i] + (along * dy - aside * dx) / distance);
    }

    private void offer(double x, double y) {
        corners.add(new Corner(x * x + y * y, x, y));
    }
}
