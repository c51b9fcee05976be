package org.loomwright.core.electrical.check.remedy;

import org.loomwright.core.amendment.Amendment;

import java.util.Comparator;
import java.util.List;

/**
 * One change that may bring a figure within its limit.
 *
 * @param kind what sort of change
 * @param text what to do, in words
 * @param amendments that would do it, in order; empty where it is not a matter of the loom's document
 * @param cost within its kind, in mm² x mm of copper added; never negative
 */
public record Proposal(Kind kind, String text, List<Amendment> amendments, long cost) {

    /**
     * The cheapest kind first. Own choice: another fuse costs nothing but a look at what it protects; a thicker wire in the place of one that the
     * loom has anyway takes copper and no room on a panel; a relay takes a place, two fuse ends and a coil wire; another feed changes when
     * a load is live and has to be thought about. Within thicker wires length times added area counts.
     */
    public enum Kind {
        /** Another fuse in the same holder. */
        OTHER_FUSE,
        /** A thicker wire in the place of one. */
        THICKER_WIRE,
        /** A relay that takes the load off a switch, with a fused feed of its own. */
        RELAY,
        /** A fused feed of its own for an added circuit. */
        OTHER_FEED
    }

    /** By kind, then cost. */
    public static final Comparator<Proposal> CHEAPEST_FIRST =
            Comparator.comparing(Proposal::kind)
                    .thenComparingLong(Proposal::cost)
                    .thenComparing(Proposal::text);

    public Proposal {
        amendments = List.copyOf(amendments);
        if (cost < 0) {
            throw new IllegalArgumentException("a change does not cost less than nothing: " + cost);
        }
    }
}
