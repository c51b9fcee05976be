package org.loomwright.core.geometry.packing;

import java.util.Arrays;

/**
 * The elastic model the search works with: circles are soft, a wall of adjustable radius presses them together.
 *
 * <p>With {@code h} the overlap of a pair or the escape through the wall, the function is
 * {@code pressure * (R - reference) + sum of h^2 / 2}. Its minimum for a small pressure is a packing whose contacts are
 * pressed in a little, and {@code R + 2 E / pressure} (E the elastic sum) foretells, to second order, the wall radius
 * once the pressure is gone: in a linear spring the wall moves by {@code pressure / k} and stores
 * {@code pressure^2 / 2k}.
 *
 * <p>The vector holds n abscissae, n ordinates and the wall radius divided by {@link #wallScale()}, which brings the
 * curvature of the wall direction near that of a single circle. Pairs come from a {@link NeighbourList}. Not thread
 * safe.
 *
 * <p>Source: own derivation; soft-disc penalty functions are common property of the packing literature.
 */
final class OverlapEnergy {

    private static final double COINCIDENT = 1e-24;

    private final double[] radii;
    private final int count;
    private final double wallScale;
    private final NeighbourList neighbours;
    private double pressure;
    private double reference;
    private double elastic;
    private long work;

    OverlapEnergy(double[] radii) {
        this.radii = radii;
        this.count = radii.length;
        this.wallScale = 1 / Math.sqrt(Math.sqrt(count));
        this.neighbours = new NeighbourList(radii);
    }

    int dimension() {
        return 2 * count + 1;
    }

    double wallScale() {
        return wallScale;
    }

    double wallRadius(double[] z) {
        return z[2 * count] * wallScale;
    }

    /** Pair visits and coordinate updates so far: the deterministic measure of effort. */
    long work() {
        return work;
    }

    /** Sets the wall pressure so that boundary overlaps are near {@code squeeze} (in units of the rms radius). */
    void press(double squeeze, double[] z) {
        pressure = 3.5 * Math.sqrt(count) * squeeze;
        reference = wallRadius(z);
    }

    /** Wall radius foretold for zero pressure, valid after {@link #evaluate} at a minimum. */
    double foretoldRadius(double[] z) {
        return wallRadius(z) + 2 * elastic / pressure;
    }

    /** Wall radius plus elastic sum over pressure: what a minimum is worth while pressed. */
    double pressedRadius(double[] z) {
        return wallRadius(z) + elastic / pressure;
    }

    /** The function value of a minimum with that pressed radius. */
    double valueOf(double pressedRadius) {
        return pressure * (pressedRadius - reference);
    }

    /** The value; fills in the gradient. */
    double evaluate(double[] z, double[] gradient) {
        work += neighbours.refresh(z) + 12L * count;
        Arrays.fill(gradient, 0);
        gradient[2 * count] = pressure * wallScale;
        elastic = (pairTerms(z, gradient) + wallTerms(z, gradient)) / 2;
        return pressure * (wallRadius(z) - reference) + elastic;
    }

    private double wallTerms(double[] z, double[] gradient) {
        double wall = wallRadius(z);
        double sum = 0;
        double push = 0;
        for (int i = 0; i < count; i++) {
            double x = z[i];
            double y = z[count + i];
            double room = wall - radii[i];
            double square = x * x + y * y;
            if (room < 0 || square > room * room) {
                double distance = Math.sqrt(square + COINCIDENT);
                double escape = distance - room;
                sum += escape * escape;
                push += escape;
                gradient[i] += escape * x / distance;
                gradient[count + i] += escape * y / distance;
            }
        }
        gradient[2 * count] -= push * wallScale;
        return sum;
    }

    private double pairTerms(double[] z, double[] gradient) {
        int[] start = neighbours.starts();
        int[] other = neighbours.others();
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double x = z[i];
            double y = z[count + i];
            double radius = radii[i];
            double pullX = 0;
            double pullY = 0;
            for (int k = start[i]; k < start[i + 1]; k++) {
                int j = other[k];
                double dx = x - z[j];
                double dy = y - z[count + j];
                double reach = radius + radii[j];
                double square = dx * dx + dy * dy;
                if (square < reach * reach) {
                    double distance = Math.sqrt(square + COINCIDENT);
                    double overlap = reach - distance;
                    double factor = overlap / distance;
                    sum += overlap * overlap;
                    pullX -= factor * dx;
                    pullY -= factor * dy;
                    gradient[j] += factor * dx;
                    gradient[count + j] += factor * dy;
                }
            }
            gradient[i] += pullX;
            gradient[count + i] += pullY;
        }
        work += start[count];
        return sum;
    }
}
