package org.loomwright.core.loom;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Length;

import java.util.List;

/**
 * A run of the loom between two nodes.
 *
 * @param id unique among the segments of the loom
 * @param from the node nearer the datum
 * @param to the node farther from it
 * @param length along the centre line, the figure that calculations use
 * @param readings repeat readings of the same length, in the order taken
 * @param leaves how it leaves its {@code from} node, or null when not recorded
 * @param bendDegrees sum of all bends along it as it lies in the vehicle, 0 when it lies straight
 * @param finish its covering
 * @param openings what it passes through
 */
public record Segment(
        String id,
        String from,
        String to,
        Length length,
        List<Length> readings,
        @Nullable Departure leaves,
        int bendDegrees,
        Finish finish,
        List<Opening> openings) {

    public Segment {
        readings = List.copyOf(readings);
        openings = List.copyOf(openings);
    }

    /** @return a copy with another covering */
    public Segment withFinish(Finish newFinish) {
        return new Segment(
                id, from, to, length, readings, leaves, bendDegrees, newFinish, openings);
    }

    /** @return a copy with other openings */
    public Segment withOpenings(List<Opening> newOpenings) {
        return new Segment(
                id, from, to, length, readings, leaves, bendDegrees, finish, newOpenings);
    }

    /** @return a copy with another length, for which the old readings no longer speak */
    public Segment withLength(Length newLength) {
        return new Segment(
                id, from, to, newLength, List.of(), leaves, bendDegrees, finish, openings);
    }
}
