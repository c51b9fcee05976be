package org.loomwright.document.drawing;

/** How much of a loom is written on its drawing. */
public enum Detail {
    /** Everything: breakouts, segments, openings, and the devices at each node with their tails. */
    DEVICES,
    /** Breakouts and segments; openings are only marked. For a small sheet whose tables say the rest. */
    BRANCHES
}
