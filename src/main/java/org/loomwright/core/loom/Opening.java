package org.loomwright.core.loom;

import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.quantity.Length;

/**
 * Something that the covered segment passes through or is held by.
 *
 * @param id unique among the openings of the loom
 * @param name where it is, for example {@code bulkhead grommet}
 * @param kind what it is
 * @param position distance along the segment from its end nearer the datum
 * @param clearDiameter the largest round thing that passes
 * @param passes which way parts are fed through it
 */
public record Opening(
        String id,
        String name,
        OpeningKind kind,
        Length position,
        Length clearDiameter,
        PassDirection passes) {

    /** Which way the loom is fed through an opening. */
    public enum PassDirection {
        /** Ends beyond the opening go through it, away from the datum. */
        AWAY_FROM_DATUM,
        /** The datum side goes through it. */
        TOWARDS_DATUM,
        /** Either way. */
        EITHER,
        /** It opens and closes round the loom: nothing need be fed through. */
        OPENS
    }
}
