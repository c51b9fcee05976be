package org.loomwright.core.geometry.packing;

/**
 * The disturbances a hop can make. Each changes the vector of an {@link Arrangement} in place.
 */
final class Moves {

    private static final int SPOTS = 40;

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

    /** All circles anywhere in a roomy container. */
    double[] scatter() {
        double area = 0;
        for (double radius : radii) {
            area += radius * radius;
        }
        double wall = Math.max(1.1 * Math.sqrt(area), radii[0] * 1.05);
        double[] z = new double[2 * count + 1];
        z[2 * count] = wall / wallScale;
        for (int i = 0; i < count; i++) {
            dropAnywhere(z, i, Math.max(0, wall - radii[i]));
        }
        return z;
    }

    private void dropAnywhere(double[] z, int circle, double reach) {
        double x;
        double y;
        do {
            x = random.around(1);
            y = random.around(1);
        } while (x * x + y * y > 1);
        z[circle] = reach * x;
        z[count + circle] = reach * y;
    }

    /** The least painful of several exchanges of two circles of different size. */
    void swap(double[] z) {
        int rounds = 1 + random.below(MOST);
        double least = Double.POSITIVE_INFINITY;
        int bestI = 0;
        int bestJ = 0;
        for (int round = 0; round < rounds; round++) {
            int i = random.below(count);
            int j = partner(i);
            double pain = swapPain(z, i, j);
            if (pain < least) {
                least = pain;
                bestI = i;
                bestJ = j;
            }
        }
        exchange(z, bestI, bestJ);
        exchange(z, count + bestI, count + bestJ);
    }

    private int partner(int i) {
        int reach = random.fraction() < NEAR ? Math.max(1, count / 6) : count;
        int j = i;
        for (int attempt = 0; attempt < 20 && radii[i] == radii[j]; attempt++) {
            int low = Math.max(0, i - reach);
            int high = Math.min(count, i + reach + 1);
            j = low + random.below(high - low);
        }
        return j;
    }

    static final double NEAR = Double.parseDouble(System.getProperty("near", "0.5"));
    static final int MOST = Integer.getInteger("most", 30);

    private double swapPain(double[] z, int i, int j) {
        exchange(z, i, j);
        exchange(z, count + i, count + j);
        double wall = z[2 * count] * wallScale;
        double pain =
                painAt(z, i, z[i], z[count + i])
                        + painAt(z, j, z[j], z[count + j])
                        + escape(z, i, wall)
                        + escape(z, j, wall);
        exchange(z, i, j);
        exchange(z, count + i, count + j);
        return pain;
    }

    private double escape(double[] z, int i, double wall) {
        double e = Math.sqrt(z[i] * z[i] + z[count + i] * z[count + i]) + radii[i] - wall;
        return e > 0 ? e * e : 0;
    }

    private static void exchange(double[] z, int a, int b) {
        double kept = z[a];
        z[a] = z[b];
        z[b] = kept;
    }

    /** Takes one circle out and puts it into the roomiest of many random spots. */
    void reinsert(double[] z) {
        int circle = random.below(count);
        double wall = z[2 * count] * wallScale;
        double[] probe = {0, 0};
        double least = Double.POSITIVE_INFINITY;
        double bestX = z[circle];
        double bestY = z[count + circle];
        for (int spot = 0; spot < SPOTS; spot++) {
            aim(probe, Math.max(0, wall - radii[circle]));
            double pain = painAt(z, circle, probe[0], probe[1]);
            if (pain < least) {
                least = pain;
                bestX = probe[0];
                bestY = probe[1];
            }
        }
        z[circle] = bestX;
        z[count + circle] = bestY;
    }

    private void aim(double[] probe, double reach) {
        do {
            probe[0] = random.around(1);
            probe[1] = random.around(1);
        } while (probe[0] * probe[0] + probe[1] * probe[1] > 1);
        probe[0] *= reach;
        probe[1] *= reach;
    }

    private double painAt(double[] z, int circle, double x, double y) {
        double pain = 0;
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
}
