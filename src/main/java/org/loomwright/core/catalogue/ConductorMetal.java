package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;

/**
 * What conductors are made of.
 *
 * @param metal its name, for example {@code copper}
 * @param resistivity resistance at 20 °C of one metre with a cross-section of 1 mm², more than zero
 * @param coefficient by how much the resistance at 20 °C grows with each kelvin, more than zero and less than 0.01
 * @param resistivityProvenance where the resistivity comes from
 * @param coefficientProvenance where the coefficient comes from
 */
public record ConductorMetal(
        String metal,
        LinearResistance resistivity,
        Ratio coefficient,
        Provenance resistivityProvenance,
        Provenance coefficientProvenance) {

    private static final Ratio TOO_STEEP = new Ratio(10_000);

    public ConductorMetal {
        if (resistivity.nanoohmsPerMetre() <= 0) {
            throw new IllegalArgumentException(
                    "the resistivity of %s must be more than zero, was %s"
                            .formatted(metal, resistivity));
        }
        if (coefficient.compareTo(Ratio.ZERO) <= 0 || coefficient.compareTo(TOO_STEEP) >= 0) {
            throw new IllegalArgumentException(
                    "the temperature coefficient of %s must be more than 0 and less than %s, was %s"
                            .formatted(metal, TOO_STEEP, coefficient));
        }
    }
}
