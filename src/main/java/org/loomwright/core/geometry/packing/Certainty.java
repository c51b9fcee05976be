package org.loomwright.core.geometry.packing;

/** How sure it is that no smaller container exists. */
public enum Certainty {
    /** No smaller one exists: the exact formula for up to three circles, or the proved lower bound is reached. */
    PROVED,

    /** The best found within the effort; a smaller one may exist, though never below the lower bound. */
    BEST_FOUND
}
