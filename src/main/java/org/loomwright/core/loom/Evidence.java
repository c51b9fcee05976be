package org.loomwright.core.loom;

/**
 * Why we believe that a finish is the original one.
 *
 * @param kind how it was established
 * @param note photograph, place or reason
 */
public record Evidence(EvidenceKind kind, String note) {

    /** How a finish was established. */
    public enum EvidenceKind {
        /** Counted or measured on the loom itself. */
        MEASURED,
        /** Seen unfaded under a clip, a grommet or a sleeve. */
        UNDER_COVER,
        /** Read from a photograph. */
        PHOTOGRAPH,
        /** Taken from a second loom of the same kind. */
        SECOND_LOOM,
        /** Assumed; nobody has looked. */
        ASSUMED
    }
}
