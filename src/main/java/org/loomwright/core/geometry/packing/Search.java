package org.loomwright.core.geometry.packing;

/**
 * Looks for a tight arrangement of four or more circles: several starts, then rounds of hops, then settling.
 *
 * <p>A round takes one arrangement through three squeezes, from soft to nearly true (for equal circles every other round,
 * at random, a little truer). In each it hops: disturbs the arrangement, relaxes it, and keeps the result if it is
 * tighter. With a tolerance it also keeps a slightly looser one: at random, a tolerance's share looser on average, less and
 * less as the squeeze's work runs out, and a third of that in the later squeezes. A round ends with its share of the work or when no hop has helped for long. The
 * next round begins anew: from scattered circles, or from the best arrangement so far with some pairs exchanged. The
 * search ends with its work, or as soon as the proved lower bound is reached.
 *
 * <p>Cost: the given work, counted in pair visits. Deterministic for the same radii, work and seed. Source: basin
 * hopping after D. Wales, J. Doye, "Global optimization by basin-hopping", 1997; the tolerance after G. Dueck, T. Scheuer,
 * "Threshold accepting", 1990, with random thresholds; the soft-to-true squeeze and the
 * comparison by pain are own derivation.
 */
final class Search {

    private static final double[] SQUEEZES = {0.08, 0.03, 0.01};
    private static final double[] SQUEEZES_OF_EQUAL = {0.06, 0.02, 0.008};
    private static final double TRUER = 0.6;
    private static final double[] SHARES = {0.45, 0.8, 1};
    private static final int PATIENCE_PER_CIRCLE = 4;
    private static final int STEPS_FROM_AFAR = 400;
    private static final int STEPS_PER_HOP = 150;
    private static final double SCATTERABLE = 12;
    private static final double REACHED = 1e-10;
    private static final double LATER_TOLERANCE = 0.3;

    private final double[] radii;
    private final int count;
    private final boolean uniform;
    private final double[] squeezes;
    private final OverlapEnergy energy;
    private final Relaxation relaxation;
    private final Starts starts;
    private final SeededRandom random;
    private final Moves moves;
    private final double tolerance;
    private final double lowerBound;
    private Arrangement best;
    private boolean lowerBoundReached;

    /**
     * @param tolerance how much looser, as a share of the radius, a hop may leave an arrangement on average at first
     */
    Search(CanonicalRadii canonical, long seed, double tolerance) {
        this.tolerance = tolerance;
        this.radii = canonical.scaled();
        this.count = radii.length;
        this.uniform = canonical.isUniform();
        this.squeezes = uniform ? SQUEEZES_OF_EQUAL : SQUEEZES;
        this.energy = new OverlapEnergy(radii);
        this.relaxation = new Relaxation(energy);
        this.starts = new Starts(radii, energy.wallScale());
        this.random = new SeededRandom(seed);
        this.moves = new Moves(radii, energy.wallScale(), random);
        this.lowerBound = LowerBound.of(radii);
        this.best = new Arrangement(new double[0], Double.POSITIVE_INFINITY);
    }

    /** Centres in units, abscissae, then ordinates, then one entry without meaning, in the order of the radii. */
    double[] run(long work) {
        Arrangement start = bestStart();
        long roundWork = (long) ((work - energy.work()) / rounds());
        double[] vector = start.vector();
        while (energy.work() < work && !lowerBoundReached) {
            keepIfBest(round(vector, energy.work(), Math.min(work, energy.work() + roundWork)));
            vector = restart();
        }
        return relaxation.settle(best).vector();
    }

    private Arrangement bestStart() {
        Arrangement tightest = best;
        for (double[] vector : starts.all()) {
            Arrangement start =
                    relaxation.relax(
                            vector, squeezes[0], STEPS_FROM_AFAR, Double.POSITIVE_INFINITY);
            keepIfBest(start);
            tightest = start.isTighterThan(tightest) ? start : tightest;
        }
        return tightest;
    }

    /** Few circles and equal ones gain by many short rounds, many different ones by a long descent. */
    private double rounds() {
        return Math.max(1, (uniform ? 2000.0 : 60.0) / count);
    }

    private void keepIfBest(Arrangement pressed) {
        Arrangement eased = relaxation.ease(pressed);
        if (eased.isTighterThan(best)) {
            best = eased;
            lowerBoundReached =
                    eased.radius() < lowerBound * 1.001
                            && relaxation.settle(eased).radius() <= lowerBound * (1 + REACHED);
        }
    }

    private Arrangement round(double[] vector, long from, long until) {
        Arrangement current = new Arrangement(vector, Double.POSITIVE_INFINITY);
        double scale = uniform && random.fraction() < 0.5 ? TRUER : 1;
        for (int phase = 0; phase < squeezes.length; phase++) {
            double squeeze = scale * squeezes[phase];
            current =
                    relaxation.relax(
                            current.vector(), squeeze, STEPS_FROM_AFAR, Double.POSITIVE_INFINITY);
            double allowed = phase == 0 ? tolerance : LATER_TOLERANCE * tolerance;
            long end = from + (long) ((until - from) * SHARES[phase]);
            current = hop(current, squeeze, allowed, end);
        }
        return current;
    }

    private Arrangement hop(Arrangement start, double squeeze, double allowed, long until) {
        Arrangement tightest = start;
        Arrangement current = start;
        int failures = 0;
        long from = energy.work();
        while (energy.work() < until && failures < PATIENCE_PER_CIRCLE * count) {
            double left = (until - energy.work()) / (double) (until - from);
            double limit = radiusToStayBelow(current, allowed * left);
            Arrangement next = relaxation.relax(disturbed(current), squeeze, STEPS_PER_HOP, limit);
            boolean helped = next.isTighterThan(tightest);
            tightest = helped ? next : tightest;
            failures = helped ? 0 : nextFailures(failures, next, limit);
            current = next.radius() < limit ? next : current;
        }
        return tightest;
    }

    /** A looser hop that is kept is neither success nor failure. */
    private static int nextFailures(int failures, Arrangement next, double limit) {
        return next.radius() < limit ? failures : failures + 1;
    }

    /** Without tolerance the radius to beat; else a random excess, exponentially distributed round the mean. */
    private double radiusToStayBelow(Arrangement current, double meanExcess) {
        return meanExcess == 0
                ? current.radiusToBeat()
                : current.radius() * (1 - meanExcess * StrictMath.log(1 - random.fraction()));
    }

    private double[] disturbed(Arrangement current) {
        double[] vector = current.vector();
        if (!uniform && random.fraction() < 0.8) {
            moves.swap(vector);
        } else if (random.fraction() < 0.9) {
            moves.reinsert(vector);
        } else {
            moves.shake(vector, 0.4);
        }
        return vector;
    }

    private double[] restart() {
        if (uniform || (radii[0] < SCATTERABLE && random.fraction() < 0.3)) {
            return moves.scatter();
        }
        double[] vector = best.vector();
        moves.shuffle(vector, Math.max(2, (int) (0.15 * count)));
        return vector;
    }
}
