package org.loomwright.core.routing;

import org.loomwright.core.quantity.Length;

/**
 * How long one wire is cut, with every part of it.
 *
 * @param wire id of the wire
 * @param alongLoom sum of the segments on its route
 * @param tailA bare tail at end A
 * @param tailB bare tail at end B
 * @param takeUp extra for lay and bends
 * @param terminationA used up in making the termination at end A
 * @param terminationB used up in making the termination at end B
 * @param reserve kept for making the ends again
 * @param rounding added to reach a whole cutting step
 */
public record CutLength(
        String wire,
        Length alongLoom,
        Length tailA,
        Length tailB,
        Length takeUp,
        Length terminationA,
        Length terminationB,
        Length reserve,
        Length rounding) {

    /** @return what was measured: the way along the loom and both tails */
    public Length measured() {
        return alongLoom.plus(tailA).plus(tailB);
    }

    /** @return the length to cut: the sum of all parts */
    public Length cut() {
        return beforeRounding().plus(rounding);
    }

    /** @return the sum of all parts but the rounding */
    public Length beforeRounding() {
        return measured().plus(takeUp).plus(terminationA).plus(terminationB).plus(reserve);
    }
}
