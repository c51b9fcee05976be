package org.loomwright.core.catalogue;

import org.loomwright.core.quantity.Length;

/**
 * A size in which a grommet, a clip or a tube can be had.
 *
 * @param kind what it is
 * @param clearDiameter the largest bundle that passes
 * @param provenance where the size comes from
 */
public record OpeningSize(OpeningKind kind, Length clearDiameter, Provenance provenance) {}
