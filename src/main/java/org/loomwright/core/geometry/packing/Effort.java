package org.loomwright.core.geometry.packing;

/**
 * How much work a packing may cost. Counted in steps of arithmetic, never in time: the answer is the same on a slow
 * machine.
 */
public enum Effort {
    /** For answers while somebody waits. */
    NORMAL(1),

    /** Ten times the work of {@link #NORMAL}, which it includes: never a looser answer. */
    THOROUGH(10),

    /**
     * A hundred times the work of {@link #NORMAL}, which it includes: about a second for 30 circles, six for 120 and
     * minutes for thousands. For a bundle that only just fails to pass.
     */
    EXHAUSTIVE(100);

    private final int share;

    Effort(int share) {
        this.share = share;
    }

    /** How many times the normal work. */
    int share() {
        return share;
    }
}
