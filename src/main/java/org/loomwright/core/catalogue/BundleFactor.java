package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.Ratio;

/**
 * What is left of each cable's rating from so many loaded wires in a bundle on.
 *
 * @param fromLoadedWires from how many wires that carry current at the same time, at least 1
 * @param factor more than 0, at most 1
 * @param provenance where the factor comes from
 */
public record BundleFactor(int fromLoadedWires, Ratio factor, Provenance provenance) {

    public BundleFactor {
        if (fromLoadedWires < 1) {
            throw new IllegalArgumentException(
                    "a bundle has at least 1 loaded wire, was " + fromLoadedWires);
        }
        if (factor.compareTo(Ratio.ZERO) <= 0 || factor.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(
                    "a bundle factor is more than 0 and at most 1, was " + factor);
        }
    }
}
