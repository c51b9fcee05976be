package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

/**
 * A size of single cable.
 *
 * @param designation strands and strand diameter as the trade writes them, for example {@code 14/0.30}
 * @param metal cross-section of the metal
 * @param outsideDiameter over the insulation, nominal
 * @param rating published or recalled continuous rating of one cable in free air
 * @param diameterProvenance where the outside diameter comes from
 * @param ratingProvenance where the rating comes from
 */
public record ConductorSize(
        String designation,
        CrossSection metal,
        Length outsideDiameter,
        Current rating,
        Provenance diameterProvenance,
        Provenance ratingProvenance) {}
