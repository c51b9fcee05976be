package org.loomwright.core.geometry.packing;

/**
 * Lets arrangements find their balance: pressed together while searching, settled without pressure at the end.
 */
final class Relaxation {

    private static final double SQUEEZE = Double.parseDouble(System.getProperty("sq", "0.06"));
    static final double TOL = Double.parseDouble(System.getProperty("tol", "0.05"));
    private static final double LAST_SQUEEZE = 1e-11;
    private static final double EASING = 0.1;

    private final OverlapEnergy energy;
    private final LimitedMemoryBfgs minimiser;

    Relaxation(OverlapEnergy energy) {
        this.energy = energy;
        this.minimiser = new LimitedMemoryBfgs(energy);
    }

    /** Presses the arrangement together, roughly; takes the vector over. */
    Arrangement relax(double[] vector, int mostSteps, double hopelessAbove) {
        energy.press(SQUEEZE, vector);
        minimiser.minimise(vector, TOL * SQUEEZE, mostSteps, energy.valueOf(hopelessAbove));
        Arrangement a = new Arrangement(vector, energy.foretoldRadius(vector));
        a.enthalpy = energy.enthalpy(vector);
        return a;
    }

    /** Takes the pressure away step by step until overlaps are next to nothing. */
    Arrangement settle(Arrangement pressed, int mostSteps) {
        double[] vector = pressed.vector();
        for (double squeeze = SQUEEZE; squeeze > LAST_SQUEEZE; squeeze *= EASING) {
            energy.press(squeeze, vector);
            minimiser.minimise(vector, 1e-4 * squeeze, mostSteps, Double.POSITIVE_INFINITY);
        }
        return new Arrangement(vector, energy.foretoldRadius(vector));
    }
}
