package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;

import java.util.function.ToDoubleFunction;

/**
 * A loom beside the recorded one.
 *
 * @param now the loom with its additions
 * @param recorded the recorded loom, or null where nobody simulated it
 * @param additions what is new in the loom
 */
record Compared(Observations now, @Nullable Observations recorded, Additions additions) {

    /**
     * How much of its limit the recorded loom used in its worst scenario.
     *
     * @param use figure over limit
     * @param worst where the loom uses most now
     * @return not a number where nobody knows: the recorded loom was not simulated in that scenario and keeps its limit in all others
     */
    double useBefore(ToDoubleFunction<Observed> use, Observed worst) {
        if (recorded == null) {
            return additions.equals(Additions.NONE) ? now.most(use) : Double.NaN;
        }
        double most = recorded.most(use);
        return most > 1 || recorded.has(worst.scenario()) ? most : Double.NaN;
    }

    /** Whether the wire is one more than were recorded, not one in the place of another. */
    boolean isAdded(String wire) {
        boolean replaces = recorded != null && recorded.loom().wires().containsKey(wire);
        return additions.hasWire(wire) && !replaces;
    }

    /** The recorded loom, or this one where it is that. */
    Observations stock() {
        return recorded == null ? now : recorded;
    }
}
