package org.loomwright.core.routing;

import org.loomwright.core.quantity.Ratio;

import java.math.RoundingMode;

/** Why a wire in a loom is longer than the loom's centre line. */
public sealed interface TakeUp {

    /**
     * A fraction of the whole measured length, tails included.
     *
     * @param ratio 0 for none; 0.01 to 0.02 is usual for a straight-laid loom (common practice, no source)
     */
    record Given(Ratio ratio) implements TakeUp {

        public Given {
            if (ratio.compareTo(Ratio.ZERO) < 0 || ratio.compareTo(Ratio.ONE) > 0) {
                throw new IllegalArgumentException("a take-up is 0 to 1, was " + ratio);
            }
        }
    }

    /**
     * Computed: a helix along the covered run, and the longer way round the outside of each bend.
     *
     * @param layMultiple length of one turn over the diameter of the helix, more than 0; 8 to 16 is stranding practice
     *     (common practice, no source)
     */
    record FromLay(Ratio layMultiple) implements TakeUp {

        public FromLay {
            if (layMultiple.compareTo(Ratio.ZERO) <= 0) {
                throw new IllegalArgumentException(
                        "a lay multiple must be more than 0, was " + layMultiple);
            }
        }

        /**
         * How much longer a helix is than its axis.
         *
         * <p>Source: own derivation. One turn unrolled is a right triangle with the lay and the circumference, so the ratio is
         * sqrt(1 + (pi / multiple)^2) - 1.
         *
         * @return the extra length as a fraction of the axis, rounded up to a millionth
         */
        public Ratio helix() {
            double slope = Math.PI / layMultiple.toDouble();
            return Ratio.rounded(Math.sqrt(1 + slope * slope) - 1, RoundingMode.CEILING);
        }
    }
}
