package org.loomwright.core.geometry.packing;

import java.util.List;

/** Packs circles into the smallest container circle it can find. */
public final class CirclePacker {

    private static final double PROVED_WITHIN = 1e-9;

    private CirclePacker() {}

    public static PackedCircles pack(List<Double> radiiMm, Effort effort) {
        return pack(radiiMm.stream().mapToDouble(Double::doubleValue).toArray(), effort);
    }

    public static PackedCircles pack(double[] radiiMm, Effort effort) {
        check(radiiMm);
        CanonicalRadii canonical = new CanonicalRadii(radiiMm);
        double[] sorted = canonical.sortedMm();
        double[] centres =
                sorted.length <= 3 ? ThreeCircles.centres(sorted) : search(canonical, effort);
        return FeasibleFinish.of(canonical, centres);
    }

    private static double[] search(CanonicalRadii canonical, Effort effort) {
        double[] centres = new Search(canonical, effort).run();
        for (int k = 0; k < centres.length; k++) {
            centres[k] *= canonical.unitMm();
        }
        return centres;
    }

    private static void check(double[] radiiMm) {
        for (int i = 0; i < radiiMm.length; i++) {
            if (!(radiiMm[i] > 0) || Double.isInfinite(radiiMm[i])) {
                throw new IllegalArgumentException(
                        "radius "
                                + i
                                + " must be finite and above zero, not "
                                + radiiMm[i]
                                + " mm");
            }
        }
    }
}
