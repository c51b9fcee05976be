package org.loomwright.core.period;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.finding.Subject;

/**
 * One aspect of one addition.
 *
 * @param subject the addition: a wire, device, segment or opening of the amended loom
 * @param aspect which side of it is judged
 * @param what what it is, for example {@code 44/0.30}
 * @param judgement how it stands beside what was usual
 * @param why the reason, in one or two sentences
 * @param basis where the reason comes from, or null where the loom itself or the judged colour tells
 * @param alternative what would be of the period instead, or null where nothing needs to be or nobody knows
 * @param wayBack how this addition is undone
 */
public record PeriodItem(
        Subject subject,
        Aspect aspect,
        String what,
        Judgement judgement,
        String why,
        @Nullable Provenance basis,
        @Nullable String alternative,
        String wayBack) {

    /** Sides of an addition. */
    public enum Aspect {
        /** Its colour beside the colour code. */
        COLOUR,
        /** Its conductor size. */
        SIZE,
        /** The terminal on its end A. */
        TERMINAL_A,
        /** The terminal on its end B. */
        TERMINAL_B,
        /** Its kind. */
        DEVICE,
        /** The fuses in it. */
        FUSE,
        /** Its covering. */
        COVERING,
        /** The opening itself. */
        OPENING
    }
}
