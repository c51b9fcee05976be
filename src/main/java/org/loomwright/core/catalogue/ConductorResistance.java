package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.LinearResistance;

/**
 * What one metre of a conductor size resists at 20 °C.
 *
 * @param designation the size, as in the table of conductor sizes
 * @param at20 resistance per metre at 20 °C, more than zero
 * @param provenance where the figure comes from
 */
public record ConductorResistance(
        String designation, LinearResistance at20, Provenance provenance) {

    public ConductorResistance {
        if (at20.nanoohmsPerMetre() <= 0) {
            throw new IllegalArgumentException(
                    "the resistance of %s must be more than zero, was %s"
                            .formatted(designation, at20));
        }
    }
}
