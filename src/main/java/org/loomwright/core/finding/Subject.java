package org.loomwright.core.finding;

/**
 * The thing that a finding is about, and where it stands in the document that was handed in.
 *
 * @param kind what sort of thing it is
 * @param id its id; for a point {@code device/point}; empty for the loom, the vehicle and settings
 * @param pointer JSON pointer (RFC 6901) into the document as submitted, empty when the finding is not about one place
 */
public record Subject(ThingKind kind, String id, String pointer) {

    /**
     * @param kind what sort of thing it is
     * @param id its id
     * @return a subject without a place in a document
     */
    public static Subject of(ThingKind kind, String id) {
        return new Subject(kind, id, "");
    }

    /** @return kind and id in words, for example {@code segment S12} */
    public String words() {
        return id.isEmpty() ? kind.words() : kind.words() + " " + id;
    }
}
