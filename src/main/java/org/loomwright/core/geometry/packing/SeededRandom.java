package org.loomwright.core.geometry.packing;

/**
 * A small stream of pseudo-random numbers that is the same on every platform and release.
 *
 * <p>Source: G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number generators", 2014 (SplitMix64).
 */
final class SeededRandom {

    private long state;

    SeededRandom(long seed) {
        this.state = seed;
    }

    /** At least 0, below 1. */
    double fraction() {
        state += 0x9E3779B97F4A7C15L;
        long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return ((mixed ^ (mixed >>> 31)) >>> 11) * 0x1p-53;
    }

    /** At least 0, below the bound. */
    int below(int bound) {
        return (int) (fraction() * bound);
    }

    /** Between minus and plus the reach. */
    double around(double reach) {
        return reach * (2 * fraction() - 1);
    }
}
