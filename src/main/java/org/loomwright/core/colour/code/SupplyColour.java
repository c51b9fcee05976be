package org.loomwright.core.colour.code;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.electrical.tracing.Supply;

/**
 * What wires of a colour are fed from.
 *
 * @param colour a body colour, with whatever tracer, or a whole colour that has a feed of its own
 * @param supply the supply, or null for the body of the vehicle
 * @param since first year of use, 0 where it is as old as the scheme
 * @param note what else the source says, may be empty
 * @param provenance where the row comes from
 */
public record SupplyColour(
        WireColour colour, @Nullable Supply supply, int since, String note, Provenance provenance) {

    /** @return whether wires of this colour go to the body */
    public boolean isEarth() {
        return supply == null;
    }

    /** @return what such wires are fed from, in words */
    public String words() {
        return supply == null ? "earth" : supply.words();
    }

    /** @return whether the row was read in a publication */
    public boolean isPublished() {
        return provenance.status() == Provenance.Status.FOUND;
    }
}
