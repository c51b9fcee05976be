package org.loomwright.core.bundle;

import org.loomwright.core.catalogue.Covering;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;

import java.math.RoundingMode;

/**
 * What runs through one segment and how thick that is.
 *
 * @param segment the segment
 * @param counts its wires by colour and size
 * @param packed the bare bundle, as packed
 * @param layFactor laid over tight diameter
 * @param covering its covering
 */
public record SegmentBundle(
        Segment segment,
        WireCounts counts,
        PackedBundle packed,
        Ratio layFactor,
        Covering covering) {

    /** @return diameter of the smallest circle found round the wires */
    public Length tight() {
        return packed.tight();
    }

    /** @return diameter as it will measure before covering: tight times lay factor, rounded up to the micrometre */
    public Length laid() {
        return tight().times(layFactor, RoundingMode.CEILING);
    }

    /** @return diameter over the covering: laid and twice the wall; zero where there is nothing to cover */
    public Length covered() {
        return counts.total() == 0 ? Length.ZERO : laid().plus(covering.wall().times(2));
    }

    /** @return how the three diameters were found, for a reader */
    public String howFound() {
        return "tight: %d circles packed, %s; laid: tight x %s; covered: laid + 2 x %s of %s (%s)"
                .formatted(
                        counts.total(),
                        packed.proved()
                                ? "smallest possible"
                                : "not below " + packed.lowerBound() + " in any arrangement",
                        layFactor,
                        covering.wall(),
                        covering.name(),
                        covering.provenance().status().words());
    }
}
