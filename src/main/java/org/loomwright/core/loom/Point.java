package org.loomwright.core.loom;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Length;

/**
 * A connecting point of a device.
 *
 * @param name unique among the points of the device: the mark on the terminal, or a word
 * @param node where its wires leave the covered loom
 * @param tail bare wire from that node to the terminal's tip
 * @param takes how many wire ends find room on it, at least 1, or null where nobody said
 */
public record Point(String name, String node, Length tail, @Nullable Integer takes) {

    /** A point of which nobody said how many wire ends it takes. */
    public Point(String name, String node, Length tail) {
        this(name, node, tail, null);
    }
}
