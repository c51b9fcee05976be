package org.loomwright.core.bundle;

import org.loomwright.core.quantity.Ratio;

/**
 * How much thicker a real bundle is than the smallest circle round its wires.
 *
 * <p>Source: IEC 60502 Annex A gives the diameter over n equal laid-up cores as k times the core; divided by the best known packing
 * of n equal circles (E. Specht, packomania.com) that is the lay factor. For two to six cores it is 1.00 within the rounding of k.
 * For 7 to 27, the last one published, it lies between 1.01 and 1.12; the default is their median. Beyond 27 the same default is
 * carried on, which is an extrapolation. {@code LayFactorReferenceTest} works it out again from the two tables.
 *
 * @param fromSeven the factor for seven wires and more, at least 1
 */
public record LayFactor(Ratio fromSeven) {

    /** Median over 7 to 27 equal cores, to the nearest 0.0001. */
    public static final LayFactor PUBLISHED = new LayFactor(new Ratio(1_040_500));

    private static final int FIRST_WITH_SLACK = 7;

    public LayFactor {
        if (fromSeven.compareTo(Ratio.ONE) < 0) {
            throw new IllegalArgumentException("a lay factor is at least 1, was " + fromSeven);
        }
    }

    /**
     * @param wires how many wires
     * @return the factor for so many
     */
    public Ratio forWires(int wires) {
        return wires < FIRST_WITH_SLACK ? Ratio.ONE : fromSeven;
    }
}
