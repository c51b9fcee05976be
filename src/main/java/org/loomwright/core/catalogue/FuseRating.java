package org.loomwright.core.catalogue;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Current;

/**
 * A fuse as it can be had, with what its marking means.
 *
 * @param style its build and what is marked on it
 * @param marked the figure on it
 * @param continuous what it carries for ever, no more than the marked figure
 * @param blow at which current it blows, or null where no source says so; more than the continuous one
 * @param colour its colour, empty where it has none that means something
 * @param provenance where the figures come from
 */
public record FuseRating(
        FuseStyle style,
        Current marked,
        Current continuous,
        @Nullable Current blow,
        String colour,
        Provenance provenance) {

    /** How a fuse is built and what the figure on it means. */
    public enum FuseStyle {
        /** A modern blade, marked with its continuous current. */
        BLADE("blade"),
        /** An old British glass cartridge, marked with the current at which it blows. */
        GLASS_BLOW_MARKED("glass, marked with its blow value");

        private final String words;

        FuseStyle(String words) {
            this.words = words;
        }

        /** @return the style as a reader sees it */
        public String words() {
            return words;
        }
    }

    public FuseRating {
        if (continuous.milliamperes() <= 0 || continuous.compareTo(marked) > 0) {
            throw new IllegalArgumentException(
                    "a %s fuse marked %s cannot carry %s"
                            .formatted(style.words(), marked, continuous));
        }
        if (blow != null && blow.compareTo(continuous) <= 0) {
            throw new IllegalArgumentException(
                    "a %s fuse that carries %s cannot blow at %s"
                            .formatted(style.words(), continuous, blow));
        }
    }
}
