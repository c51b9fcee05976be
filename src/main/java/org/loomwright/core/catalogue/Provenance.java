package org.loomwright.core.catalogue;

/**
 * Where a figure comes from.
 *
 * @param status how far it can be trusted
 * @param source the publication, the calculation or the note that says so
 */
public record Provenance(Status status, String source) {

    /** @return status and source as a reader sees them, for example {@code published: C1}; once where both say the same */
    public String inWords() {
        String words = status.words();
        return source.isEmpty() || source.equals(words) ? words : words + ": " + source;
    }

    /** How far a figure can be trusted. */
    public enum Status {
        /** Read in a publication. */
        FOUND("published"),
        /** Calculated from published figures or a definition. */
        COMPUTED("calculated"),
        /** Recalled, nothing read: a default to edit. */
        MEMORY("from memory"),
        /** A workshop's own figure in the place of one that is not published; the source is its note. */
        WORKSHOP("set by the workshop");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        /** @return the status as a reader sees it */
        public String words() {
            return words;
        }
    }
}
