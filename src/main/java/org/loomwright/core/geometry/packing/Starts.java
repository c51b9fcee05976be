package org.loomwright.core.geometry.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The constructed arrangements a search begins with, as vectors of the {@link OverlapEnergy}.
 */
final class Starts {

    private static final int LONGEST_RINGS = 2000;

    private final double[] radii;
    private final int count;
    private final double wallScale;

    Starts(double[] radii, double wallScale) {
        this.radii = radii;
        this.count = radii.length;
        this.wallScale = wallScale;
    }

    /** Corner placement round three foci: a circle, a contact and a gap of three; for equal circles curved rings too. */
    List<double[]> all() {
        List<double[]> starts = new ArrayList<>();
        starts.add(walled(CornerPlacement.arrange(radii, 0, 0)));
        starts.add(walled(CornerPlacement.arrange(radii, 1, 0)));
        starts.add(walled(CornerPlacement.arrange(radii, 1, 1 / Math.sqrt(3))));
        if (radii[0] == radii[count - 1] && count <= LONGEST_RINGS) {
            starts.add(walled(CurvedRings.arrange(count)));
        }
        return starts;
    }

    /** Puts the wall round the focus or round the largest circle, whichever is tighter. */
    private double[] walled(double[] centres) {
        double aroundFocus = wallAround(centres, 0, 0);
        double aroundLargest = wallAround(centres, centres[0], centres[count]);
        double[] vector = Arrays.copyOf(centres, 2 * count + 1);
        if (aroundLargest < aroundFocus) {
            for (int i = 0; i < count; i++) {
                vector[i] -= centres[0];
                vector[count + i] -= centres[count];
            }
        }
        vector[2 * count] = Math.min(aroundFocus, aroundLargest) / wallScale;
        return vector;
    }

    private double wallAround(double[] centres, double x, double y) {
        double wall = 0;
        for (int i = 0; i < count; i++) {
            double dx = centres[i] - x;
            double dy = centres[count + i] - y;
            wall = Math.max(wall, Math.sqrt(dx * dx + dy * dy) + radii[i]);
        }
        return wall;
    }
}
