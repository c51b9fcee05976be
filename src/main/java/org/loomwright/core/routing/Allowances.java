package org.loomwright.core.routing;

import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;

/**
 * What is added to a measured length before a wire is cut.
 *
 * @param takeUp why the wire is longer than the centre line
 * @param reTerminations how many times each end can be cut off and made again, 0 to 10
 * @param step the cut length is rounded up to a whole multiple of this
 */
public record Allowances(TakeUp takeUp, int reTerminations, Length step) {

    /**
     * Take-up 1.5 % (common practice, no source), slack for two re-terminations at each end (FAA AC 43.13-1B, chapter 11, slack; key A7), cut to
     * the next 10 mm (own choice).
     */
    public static final Allowances USUAL =
            new Allowances(new TakeUp.Given(new Ratio(15_000)), 2, Length.ofMillimetres(10));

    private static final int MOST_RE_TERMINATIONS = 10;

    public Allowances {
        if (reTerminations < 0 || reTerminations > MOST_RE_TERMINATIONS) {
            throw new IllegalArgumentException(
                    "re-terminations are 0 to %d, was %d"
                            .formatted(MOST_RE_TERMINATIONS, reTerminations));
        }
        if (!step.isPositive()) {
            throw new IllegalArgumentException("a cutting step must be positive, was " + step);
        }
    }
}
