package org.loomwright.core.geometry.packing;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Packs forty made-up loom mixes with a hundred times the normal work and prints the reference file for the tests.
 *
 * <p>Two searches of fifty times the normal work each, with seeds the packer itself does not use; the tighter counts.
 */
public final class LongRuns {

    private static final int[] COUNTS = {
        4, 6, 8, 10, 12, 15, 18, 20, 24, 30, 30, 36, 45, 50, 60, 70, 80, 90, 100, 120
    };
    private static final int SEEDS = 2;
    private static final int TIMES_NORMAL = 50;

    private LongRuns() {}

    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.println("id,wires,diameters_mm,best_container_radius_mm");
        int id = 0;
        for (int round = 0; round < 2; round++) {
            for (int count : COUNTS) {
                id++;
                List<Double> diameters = LoomMixes.diametersMm(count, 1000L + id);
                out.println(
                        "mix-"
                                + id
                                + ","
                                + count
                                + ","
                                + grouped(diameters)
                                + ","
                                + longRunMm(diameters));
            }
        }
    }

    private static double longRunMm(List<Double> diametersMm) {
        CanonicalRadii canonical =
                new CanonicalRadii(diametersMm.stream().mapToDouble(d -> d / 2).toArray());
        long work = TIMES_NORMAL * CirclePacker.normalWork(canonical);
        double best = Double.POSITIVE_INFINITY;
        for (int seed = 1; seed <= SEEDS; seed++) {
            best = Math.min(best, CirclePacker.search(canonical, work, 7919L * seed, 0).radiusMm());
        }
        return best;
    }

    /** Such as {@code 3x4.2 12x1.5}. */
    private static String grouped(List<Double> descending) {
        List<String> groups = new ArrayList<>();
        for (double diameter : descending.stream().distinct().toList()) {
            long times = descending.stream().filter(d -> d == diameter).count();
            groups.add(times + "x" + diameter);
        }
        return String.join(" ", groups);
    }
}
