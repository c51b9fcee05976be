package org.loomwright.core.geometry.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Made-up wire mixes as they occur in looms: a few common thin wires, seldom a thick one. Diameters in millimetres.
 */
final class LoomMixes {

    private static final double[] COMMON = {1.3, 1.5, 1.6, 1.8, 2.0, 2.4, 2.7, 3.0, 3.7};
    private static final double[] THICK = {4.2, 4.6, 5.2, 5.8, 6.5, 7.0};

    private LoomMixes() {}

    /** Diameters of {@code count} wires, thickest first; the same for the same seed. */
    static List<Double> diametersMm(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Double> kinds = new ArrayList<>();
        for (int k = 2 + random.nextInt(5); k > 0; k--) {
            kinds.add(COMMON[random.nextInt(COMMON.length)]);
        }
        double thickShare = 0.2 * random.nextDouble();
        List<Double> diameters = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean thick = random.nextDouble() < thickShare;
            diameters.add(
                    thick
                            ? THICK[random.nextInt(THICK.length)]
                            : kinds.get(random.nextInt(kinds.size())));
        }
        diameters.sort((a, b) -> Double.compare(b, a));
        return diameters;
    }

    static double[] radiiMm(int count, long seed) {
        return diametersMm(count, seed).stream().mapToDouble(d -> d / 2).toArray();
    }
}
