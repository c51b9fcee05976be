package org.loomwright.core.geometry.packing;

/**
 * A start for equal circles: one in the middle and rings of 6, 12, 18, ... round it, every ring full.
 *
 * <p>The ring of 6 m circles touching each other has centres at 1 / sin(pi / 6m) radii from the middle; each ring is
 * turned to where it keeps farthest from the one inside. With 1 + 3k(k + 1) circles this relaxes into the curved
 * hexagonal packing; with fewer the outermost ring is thinned evenly.
 *
 * <p>Source: B. Lubachevsky, R. Graham, "Curved hexagonal packings of equal disks in a circle", 1997; the turning by
 * search is own derivation.
 */
final class CurvedRings {

    private static final int TURNS = 48;

    private CurvedRings() {}

    /** Abscissae, then ordinates, of {@code count} circles of radius 1. */
    static double[] arrange(int count) {
        double[] centres = new double[2 * count];
        int inside = 0;
        int placed = 1;
        for (int ring = 1; placed < count; ring++) {
            int size = Math.min(6 * ring, count - placed);
            double distance = 1 / StrictMath.sin(Math.PI / (6 * ring));
            double turn = bestTurn(centres, inside, placed, distance, size);
            putRing(centres, placed, size, distance, turn);
            inside = placed;
            placed += size;
        }
        return centres;
    }

    private static void putRing(
            double[] centres, int from, int size, double distance, double turn) {
        int count = centres.length / 2;
        for (int k = 0; k < size; k++) {
            double angle = turn + 2 * Math.PI * k / size;
            centres[from + k] = distance * StrictMath.cos(angle);
            centres[count + from + k] = distance * StrictMath.sin(angle);
        }
    }

    private static double bestTurn(double[] centres, int from, int to, double distance, int size) {
        double best = 0;
        double widest = -1;
        for (int t = 0; t < TURNS; t++) {
            double turn = 2 * Math.PI * t / (TURNS * size);
            putRing(centres, to, size, distance, turn);
            double gap = smallestGap(centres, from, to, to + size);
            if (gap > widest + 1e-9) {
                widest = gap;
                best = turn;
            }
        }
        return best;
    }

    private static double smallestGap(double[] centres, int from, int to, int end) {
        int count = centres.length / 2;
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            for (int j = to; j < end; j++) {
                double dx = centres[i] - centres[j];
                double dy = centres[count + i] - centres[count + j];
                smallest = Math.min(smallest, dx * dx + dy * dy);
            }
        }
        return smallest;
    }
}
