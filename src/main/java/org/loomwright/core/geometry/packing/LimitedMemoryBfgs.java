package org.loomwright.core.geometry.packing;

/**
 * Finds a nearby local minimum of the {@link OverlapEnergy} by a quasi-Newton descent with little memory.
 *
 * <p>Every accepted step lowers the function (Armijo's rule); no coordinate moves more than one rms radius at a time.
 * Stops when no gradient component exceeds the tolerance, when the steps are used up, or when rounding leaves no
 * descent. Cost per step: one evaluation (seldom more) and about 25 passes over the vector. Deterministic; not thread
 * safe.
 *
 * <p>Source: J. Nocedal, "Updating quasi-Newton matrices with limited storage", 1980 (two-loop recursion).
 */
final class LimitedMemoryBfgs {

    private static final int MEMORY = 5;
    private static final double FIRST_STEP = 0.25;
    private static final double LONGEST_MOVE = 1;
    private static final int MOST_HALVINGS = 12;
    private static final int STEPS_BETWEEN_DOUBTS = 4;
    private static final double HOPED_FOR = 0.5;

    private final OverlapEnergy energy;
    private final int dimension;
    private final double[][] moves;
    private final double[][] changes;
    private final double[] curvatures = new double[MEMORY];
    private final double[] weights = new double[MEMORY];
    private final double[] direction;
    private double[] gradient;
    private double[] trialGradient;
    private final double[] trial;
    private int stored;
    private int newest;

    LimitedMemoryBfgs(OverlapEnergy energy) {
        this.energy = energy;
        this.dimension = energy.dimension();
        this.moves = new double[MEMORY][dimension];
        this.changes = new double[MEMORY][dimension];
        this.direction = new double[dimension];
        this.gradient = new double[dimension];
        this.trialGradient = new double[dimension];
        this.trial = new double[dimension];
    }

    /**
     * Improves {@code z} in place.
     *
     * @param hopelessAbove gives up early once the value would stay above this even if it fell on by half of what the
     *     last few steps brought
     */
    void minimise(double[] z, double gradientTolerance, int mostSteps, double hopelessAbove) {
        stored = 0;
        double value = energy.evaluate(z, gradient);
        double earlier = Double.POSITIVE_INFINITY;
        for (int step = 1; step <= mostSteps && largest(gradient) > gradientTolerance; step++) {
            if (step % STEPS_BETWEEN_DOUBTS == 0) {
                if (value - HOPED_FOR * (earlier - value) > hopelessAbove) {
                    return;
                }
                earlier = value;
            }
            value = descend(z, value, chooseDirection());
            if (Double.isNaN(value)) {
                value = energy.evaluate(z, gradient);
                if (stored == 0) {
                    return;
                }
                stored = 0;
            }
        }
        energy.evaluate(z, gradient);
    }

    private double chooseDirection() {
        applyInverseCurvature();
        double slope = dot(direction, gradient);
        if (!(slope < 0)) {
            stored = 0;
            applyInverseCurvature();
            slope = dot(direction, gradient);
        }
        double longest = largest(direction);
        if (longest > LONGEST_MOVE) {
            scale(direction, LONGEST_MOVE / longest);
            slope *= LONGEST_MOVE / longest;
        }
        return slope;
    }

    /** Steps along the direction; returns the new value, or NaN when no step lowers the function enough. */
    private double descend(double[] z, double value, double slope) {
        double length = 1;
        for (int attempt = 0; attempt < MOST_HALVINGS; attempt++) {
            for (int k = 0; k < dimension; k++) {
                trial[k] = z[k] + length * direction[k];
            }
            double next = energy.evaluate(trial, trialGradient);
            if (next <= value + 1e-4 * length * slope) {
                remember(z);
                return next;
            }
            double fitted = -slope * length * length / (2 * (next - value - slope * length));
            length = Math.min(Math.max(fitted, 0.1 * length), 0.5 * length);
        }
        return Double.NaN;
    }

    private void remember(double[] z) {
        int slot = (newest + 1) % MEMORY;
        double[] move = moves[slot];
        double[] change = changes[slot];
        double curvature = 0;
        for (int k = 0; k < dimension; k++) {
            move[k] = trial[k] - z[k];
            change[k] = trialGradient[k] - gradient[k];
            curvature += move[k] * change[k];
            z[k] = trial[k];
        }
        double[] swap = gradient;
        gradient = trialGradient;
        trialGradient = swap;
        if (curvature > 1e-10 * dot(move, move)) {
            curvatures[slot] = curvature;
            newest = slot;
            stored = Math.min(stored + 1, MEMORY);
        }
    }

    private void applyInverseCurvature() {
        for (int k = 0; k < dimension; k++) {
            direction[k] = -gradient[k];
        }
        for (int age = 0; age < stored; age++) {
            int slot = (newest - age + MEMORY) % MEMORY;
            weights[slot] = dot(moves[slot], direction) / curvatures[slot];
            add(direction, -weights[slot], changes[slot]);
        }
        scale(
                direction,
                stored == 0
                        ? FIRST_STEP
                        : curvatures[newest] / dot(changes[newest], changes[newest]));
        for (int age = stored - 1; age >= 0; age--) {
            int slot = (newest - age + MEMORY) % MEMORY;
            double correction = dot(changes[slot], direction) / curvatures[slot];
            add(direction, weights[slot] - correction, moves[slot]);
        }
    }

    private static double dot(double[] a, double[] b) {
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        int k = 0;
        for (; k + 3 < a.length; k += 4) {
            first += a[k] * b[k];
            second += a[k + 1] * b[k + 1];
            third += a[k + 2] * b[k + 2];
            fourth += a[k + 3] * b[k + 3];
        }
        for (; k < a.length; k++) {
            first += a[k] * b[k];
        }
        return (first + second) + (third + fourth);
    }

    private static void add(double[] to, double factor, double[] what) {
        for (int k = 0; k < to.length; k++) {
            to[k] += factor * what[k];
        }
    }

    private static void scale(double[] vector, double factor) {
        for (int k = 0; k < vector.length; k++) {
            vector[k] *= factor;
        }
    }

    private static double largest(double[] vector) {
        double largest = 0;
        for (double component : vector) {
            largest = Math.max(largest, Math.abs(component));
        }
        return largest;
    }
}
