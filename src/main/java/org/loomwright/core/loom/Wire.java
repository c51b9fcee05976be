package org.loomwright.core.loom;

import org.loomwright.core.catalogue.WireColour;

/**
 * One wire: electrically one piece from end to end.
 *
 * @param id unique among the wires of the loom
 * @param circuit the circuit that it serves, in words
 * @param colour body and tracer
 * @param size designation of the conductor size in the catalogue
 * @param a its first end
 * @param b its second end
 * @param condition the state it was found in
 */
public record Wire(
        String id,
        String circuit,
        WireColour colour,
        String size,
        WireEnd a,
        WireEnd b,
        Condition condition) {

    /** @return the end on that side */
    public WireEnd end(Side side) {
        return switch (side) {
            case A -> a;
            case B -> b;
        };
    }

    /** @return a copy with another end on that side */
    public Wire withEnd(Side side, WireEnd end) {
        return switch (side) {
            case A -> new Wire(id, circuit, colour, size, end, b, condition);
            case B -> new Wire(id, circuit, colour, size, a, end, condition);
        };
    }
}
