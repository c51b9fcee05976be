package org.loomwright.core.geometry.packing;

/**
 * Lets arrangements find their balance: pressed together while searching, settled without pressure at the end.
 *
 * <p>The squeeze is the depth, in units, to which the wall presses the circles on it. A large one smooths the landscape
 * and balances quickly but ranks arrangements less truly; a small one ranks truly.
 */
final class Relaxation {

    private static final double GENTLE = 0.004;
    private static final double NEXT_TO_NOTHING = 1e-11;
    private static final double EASING = 0.1;
    private static final double BALANCE_WHILE_PRESSED = 0.05;
    private static final double BALANCE_WHILE_SETTLING = 1e-4;
    private static final int STEPS_TO_GENTLE = 100;
    private static final int STEPS_TO_SETTLE = 300;

    private final OverlapEnergy energy;
    private final LimitedMemoryBfgs minimiser;

    Relaxation(OverlapEnergy energy) {
        this.energy = energy;
        this.minimiser = new LimitedMemoryBfgs(energy);
    }

    /** Presses the arrangement together, roughly; takes the vector over. May stop early above the hopeless radius. */
    Arrangement relax(double[] vector, double squeeze, int mostSteps, double hopelessAbove) {
        energy.press(squeeze, vector);
        minimiser.minimise(
                vector, BALANCE_WHILE_PRESSED * squeeze, mostSteps, energy.valueOf(hopelessAbove));
        return new Arrangement(vector, energy.pressedRadius(vector));
    }

    /** Eases to a gentle squeeze; the radius is the one foretold for no pressure. */
    Arrangement ease(Arrangement pressed) {
        return ease(pressed.vector(), GENTLE, STEPS_TO_GENTLE, BALANCE_WHILE_PRESSED);
    }

    /** Takes the pressure away step by step until overlaps are next to nothing. */
    Arrangement settle(Arrangement eased) {
        Arrangement settled = eased;
        for (double squeeze = GENTLE; squeeze > NEXT_TO_NOTHING; squeeze *= EASING) {
            settled = ease(settled.vector(), squeeze, STEPS_TO_SETTLE, BALANCE_WHILE_SETTLING);
        }
        return settled;
    }

    private Arrangement ease(double[] vector, double squeeze, int mostSteps, double balance) {
        energy.press(squeeze, vector);
        minimiser.minimise(vector, balance * squeeze, mostSteps, Double.POSITIVE_INFINITY);
        return new Arrangement(vector, energy.foretoldRadius(vector));
    }
}
