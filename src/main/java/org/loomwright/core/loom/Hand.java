package org.loomwright.core.loom;

/** The side on which the driver sits. */
public enum Hand {
    /** Right-hand drive. */
    RIGHT,
    /** Left-hand drive. */
    LEFT
}
