package org.loomwright.core.loom;

/** Which of a wire's two ends. */
public enum Side {
    /** The first one. */
    A,
    /** The second one. */
    B
}
