package org.loomwright.core.finder;

import java.util.Comparator;

/**
 * How well one thing that was seen fits a wire.
 *
 * @param share 0 to 1000
 * @param reason in words, empty where it fits without a word
 * @param isSilent whether it says nothing for or against
 */
record Fit(int share, String reason, boolean isSilent) {

    static final Comparator<Fit> WORST_FIRST =
            Comparator.comparingInt(Fit::share).thenComparing(Fit::reason);

    static Fit of(int share, String reason) {
        return new Fit(share, reason, false);
    }

    static Fit silent() {
        return new Fit(1_000, "", true);
    }
}
