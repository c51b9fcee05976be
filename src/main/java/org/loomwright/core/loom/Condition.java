package org.loomwright.core.loom;

/** What state a wire was found in. */
public enum Condition {
    /** Supple, bright copper, colour readable. */
    GOOD,
    /** Sound, but the colour can no longer be read with certainty. */
    FADED,
    /** Hard or cracking insulation. */
    BRITTLE,
    /** Burnt, chafed or cut. */
    DAMAGED,
    /** Mended at some time. */
    REPAIRED,
    /** Not there any more. */
    MISSING,
    /** Not looked at. */
    UNKNOWN,
    /** New wire. */
    NEW
}
