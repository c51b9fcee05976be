package org.loomwright.core.loom;

/** Which battery terminal goes to the body. */
public enum EarthPolarity {
    /** Positive earth. */
    POSITIVE,
    /** Negative earth. */
    NEGATIVE
}
