package org.loomwright.core.geometry.packing;

import org.loomwright.core.geometry.Point;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Turns nearly feasible centres into a packing that holds: spreads them until nothing overlaps, then measures the wall.
 */
final class FeasibleFinish {

    private static final double PROVED_WITHIN = 1e-9;

    private FeasibleFinish() {}

    static PackedCircles of(CanonicalRadii canonical, double[] centres) {
        double[] radii = canonical.sortedMm();
        int count = radii.length;
        double spread = spread(radii, centres);
        double wall = 0;
        for (int i = 0; i < count; i++) {
            centres[i] *= spread;
            centres[count + i] *= spread;
            wall = Math.max(wall, Math.hypot(centres[i], centres[count + i]) + radii[i]);
        }
        double bound = LowerBound.of(radii);
        boolean proved = count <= 3 || wall <= bound * (1 + PROVED_WITHIN);
        return new PackedCircles(
                Math.max(wall, bound),
                inInputOrder(canonical, centres),
                bound,
                proved ? Certainty.PROVED : Certainty.BEST_FOUND);
    }

    /** The factor, at least 1, by which all distances must grow so that no pair overlaps. */
    private static double spread(double[] radii, double[] centres) {
        int count = radii.length;
        double spread = 1;
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                double dx = centres[i] - centres[j];
                double dy = centres[count + i] - centres[count + j];
                double reach = radii[i] + radii[j];
                double square = dx * dx + dy * dy;
                if (square < reach * reach) {
                    spread = Math.max(spread, reach / Math.sqrt(square));
                }
            }
        }
        return spread;
    }

    private static List<Point> inInputOrder(CanonicalRadii canonical, double[] centres) {
        int count = canonical.count();
        List<Point> points = new ArrayList<>(Collections.nCopies(count, Point.ORIGIN));
        for (int rank = 0; rank < count; rank++) {
            points.set(canonical.inputIndex(rank), new Point(centres[rank], centres[count + rank]));
        }
        return points;
    }
}
