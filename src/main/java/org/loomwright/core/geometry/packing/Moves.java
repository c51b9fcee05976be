package org.loomwright.core.geometry.packing;

/**
 * The disturbances a hop can make. Each changes the vector of an {@link Arrangement} in place.
 *
 * <p>The <i>pain</i> of a circle is the sum of its squared overlaps, with others and through the wall. Several random
 * candidates are compared by pain before one is made, which costs far less than relaxing a bad one.
 */
final class Moves {

    private static final int MOST_SWAPS_COMPARED = 8;
    private static final int CIRCLES_COMPARED = 3;
    private static final int SPOTS_COMPARED = 40;
    private static final int PARTNER_ATTEMPTS = 20;

    private final double[] radii;
    private final int count;
    private final double wallScale;
    private final SeededRandom random;

    Moves(double[] radii, double wallScale, SeededRandom random) {
        this.radii = radii;
        this.count = radii.length;
        this.wallScale = wallScale;
        this.random = random;
    }

    /** The least painful of several exchanges of two circles of different size. */
    void swap(double[] z) {
        boolean similar = random.fraction() < 0.5;
        int compared = 1 + random.below(MOST_SWAPS_COMPARED);
        double least = Double.POSITIVE_INFINITY;
        int bestI = 0;
        int bestJ = 0;
        for (int k = 0; k < compared; k++) {
            int i = random.below(count);
            int j = partner(i, similar ? Math.max(1, count / 6) : count);
            double pain = painAfterSwap(z, i, j);
            if (pain < least) {
                least = pain;
                bestI = i;
                bestJ = j;
            }
        }
        exchange(z, bestI, bestJ);
    }

    /** Exchanges several pairs of different size, whatever the pain. */
    void shuffle(double[] z, int pairs) {
        for (int k = 0; k < pairs; k++) {
            int i = random.below(count);
            exchange(z, i, partner(i, count));
        }
    }

    /** A circle of different size, at most {@code reach} ranks away; after some attempts one of the same size. */
    private int partner(int i, int reach) {
        int low = Math.max(0, i - reach);
        int high = Math.min(count, i + reach + 1);
        int j = i;
        for (int attempt = 0; attempt < PARTNER_ATTEMPTS && radii[i] == radii[j]; attempt++) {
            j = low + random.below(high - low);
        }
        return j;
    }

    private double painAfterSwap(double[] z, int i, int j) {
        exchange(z, i, j);
        double pain = painAt(z, i, z[i], z[count + i]) + painAt(z, j, z[j], z[count + j]);
        exchange(z, i, j);
        return pain;
    }

    private void exchange(double[] z, int i, int j) {
        exchangeEntries(z, i, j);
        exchangeEntries(z, count + i, count + j);
    }

    private static void exchangeEntries(double[] z, int a, int b) {
        double kept = z[a];
        z[a] = z[b];
        z[b] = kept;
    }

    /** Takes a painful circle out and puts it into the roomiest of many random spots. */
    void reinsert(double[] z) {
        int circle = painful(z);
        double reach = Math.max(0, z[2 * count] * wallScale - radii[circle]);
        double[] spot = new double[2];
        double least = Double.POSITIVE_INFINITY;
        double bestX = z[circle];
        double bestY = z[count + circle];
        for (int k = 0; k < SPOTS_COMPARED; k++) {
            aimWithin(reach, spot);
            double pain = painAt(z, circle, spot[0], spot[1]);
            if (pain < least) {
                least = pain;
                bestX = spot[0];
                bestY = spot[1];
            }
        }
        z[circle] = bestX;
        z[count + circle] = bestY;
    }

    /** Of a few circles the one with the most pain for its size. */
    private int painful(double[] z) {
        int chosen = 0;
        double most = -1;
        for (int k = 0; k < CIRCLES_COMPARED; k++) {
            int i = random.below(count);
            double pain = painAt(z, i, z[i], z[count + i]) / (radii[i] * radii[i]);
            if (pain > most) {
                most = pain;
                chosen = i;
            }
        }
        return chosen;
    }

    private double painAt(double[] z, int circle, double x, double y) {
        double escape =
                Math.max(0, Math.sqrt(x * x + y * y) + radii[circle] - z[2 * count] * wallScale);
        double pain = escape * escape;
        for (int j = 0; j < count; j++) {
            double dx = x - z[j];
            double dy = y - z[count + j];
            double reach = radii[circle] + radii[j];
            double square = dx * dx + dy * dy;
            if (square < reach * reach && j != circle) {
                double overlap = reach - Math.sqrt(square);
                pain += overlap * overlap;
            }
        }
        return pain;
    }

    /** Every circle moves a little. */
    void shake(double[] z, double reach) {
        for (int k = 0; k < 2 * count; k++) {
            z[k] += random.around(reach);
        }
    }

    /** A new vector: all circles anywhere in a roomy container. */
    double[] scatter() {
        double area = 0;
        for (double radius : radii) {
            area += radius * radius;
        }
        double wall = Math.max(1.1 * Math.sqrt(area), 1.05 * radii[0]);
        double[] z = new double[2 * count + 1];
        double[] spot = new double[2];
        for (int i = 0; i < count; i++) {
            aimWithin(Math.max(0, wall - radii[i]), spot);
            z[i] = spot[0];
            z[count + i] = spot[1];
        }
        z[2 * count] = wall / wallScale;
        return z;
    }

    private void aimWithin(double reach, double[] spot) {
        do {
            spot[0] = random.around(1);
            spot[1] = random.around(1);
        } while (spot[0] * spot[0] + spot[1] * spot[1] > 1);
        spot[0] *= reach;
        spot[1] *= reach;
    }
}
