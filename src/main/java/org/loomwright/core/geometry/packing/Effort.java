package org.loomwright.core.geometry.packing;

/**
 * How much work a packing may cost. Counted in steps of arithmetic, never in time: the answer is the same on a slow
 * machine.
 */
public enum Effort {
    /** For answers while somebody waits. */
    NORMAL(1),

    /** Ten times the work of {@link #NORMAL}, which it includes: never a looser answer. */
    THOROUGH(10);

    private final int share;

    Effort(int share) {
        this.share = share;
    }

    /** How many times the normal work. */
    int share() {
        return share;
    }
}
