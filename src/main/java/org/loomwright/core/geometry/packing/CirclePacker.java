package org.loomwright.core.geometry.packing;

import java.util.List;

/**
 * Packs circles into the smallest container circle it can find.
 *
 * <p>The problem: given n radii, place n circles without overlap so that the smallest circle round all of them is as
 * small as possible (packing unequal circles in a circle). It is NP-hard; beyond a dozen circles best packings are known
 * but not proved.
 *
 * <p>Degenerate cases: no circles need a container of radius zero; one circle is its own container; up to three are
 * solved exactly. A circle so large that the others fit beside it without widening the container is recognised by the
 * lower bound. Thousands of equal circles become a hexagonal patch with a relaxed rim.
 *
 * <p>Exact or approximate: a container reported as {@link Certainty#PROVED} is smallest to within one part in 10^9. Any
 * other is the tightest found by a heuristic search, and the lower bound says how much could be left. Feasibility is
 * not heuristic: the circles are spread until no pair overlaps beyond rounding, and the container is measured last.
 *
 * <p>Cost: a fixed amount of arithmetic that depends on the number of circles and the {@link Effort} only, growing with
 * n^2 from 30 to 60 circles, little more than linearly beyond, and not at all beyond about 2,600.
 *
 * <p>Deterministic: the same radii in any order give the same container and, equal circles being interchangeable, the
 * same centres; so do radii in another unit, up to rounding. No clock and no unseeded randomness. Stateless and
 * thread-safe.
 *
 * <p>Source: own derivation, from parts credited in {@link Search}, {@link OverlapEnergy}, {@link CornerPlacement} and
 * {@link CurvedRings}.
 */
public final class CirclePacker {

    private static final double WORK_OF_30 = 3.8e6;
    private static final double UNIFORM_SHARE = 1.3;
    private static final double MOST_WORK = 1e9;
    private static final double TOLERANCE = 3e-4;

    private CirclePacker() {}

    /**
     * @param radiiMm the radii in millimetres, in any order, each finite and above zero
     * @param effort how much work to spend
     * @return the packing, centres in the order of the radii
     * @throws IllegalArgumentException if a radius is not a finite number above zero
     */
    public static PackedCircles pack(List<Double> radiiMm, Effort effort) {
        return pack(radiiMm.stream().mapToDouble(Double::doubleValue).toArray(), effort);
    }

    /**
     * @param radiiMm the radii in millimetres, in any order, each finite and above zero
     * @param effort how much work to spend
     * @return the packing, centres in the order of the radii
     * @throws IllegalArgumentException if a radius is not a finite number above zero
     */
    public static PackedCircles pack(double[] radiiMm, Effort effort) {
        check(radiiMm);
        CanonicalRadii canonical = new CanonicalRadii(radiiMm);
        if (canonical.count() <= 3) {
            return FeasibleFinish.of(canonical, ThreeCircles.centres(canonical.sortedMm()));
        }
        long work = normalWork(canonical);
        PackedCircles normal = search(canonical, work, canonical.seed(), 0);
        if (effort == Effort.NORMAL || normal.certainty() == Certainty.PROVED) {
            return normal;
        }
        PackedCircles further =
                search(
                        canonical,
                        work * (effort.share() - 1),
                        canonical.seed() + 1,
                        canonical.isUniform() ? 0 : TOLERANCE);
        return further.radiusMm() < normal.radiusMm() ? further : normal;
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

    /** Pair visits of a normal packing; one takes about two nanoseconds on the machine of the benchmark. */
    static long normalWork(CanonicalRadii canonical) {
        double upTo60 = Math.clamp(canonical.count() / 30.0, 1, 2);
        double beyond = StrictMath.pow(Math.max(1, canonical.count() / 60.0), 1.1);
        double share = canonical.isUniform() ? UNIFORM_SHARE : 1;
        return (long) Math.min(MOST_WORK, share * WORK_OF_30 * upTo60 * upTo60 * beyond);
    }

    /** One search of that much work; {@code tolerance} as in {@link Search}. */
    static PackedCircles search(CanonicalRadii canonical, long work, long seed, double tolerance) {
        double[] centres = new Search(canonical, seed, tolerance).run(work);
        for (int k = 0; k < centres.length; k++) {
            centres[k] *= canonical.unitMm();
        }
        return FeasibleFinish.of(canonical, centres);
    }
}
