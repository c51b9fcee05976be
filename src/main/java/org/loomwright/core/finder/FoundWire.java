package org.loomwright.core.finder;

import org.loomwright.core.loom.Wire;

import java.util.List;

/**
 * A wire that may be the one that was seen.
 *
 * @param wire the wire
 * @param score how well everything fits together, 1 to 100; a rank, not a probability
 * @param reasons what speaks for it and against it
 * @param colour its recorded colour in letters and words
 * @param from its end A in words
 * @param to its end B in words
 * @param route ids of the nodes that it comes by, from A to B
 * @param expected what a voltmeter should show on it; empty where no more than the first few wires are told
 */
public record FoundWire(
        Wire wire,
        int score,
        List<String> reasons,
        String colour,
        String from,
        String to,
        List<String> route,
        List<Expected> expected) {

    public FoundWire {
        reasons = List.copyOf(reasons);
        route = List.copyOf(route);
        expected = List.copyOf(expected);
    }
}
