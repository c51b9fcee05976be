package org.loomwright.document.pdf;

import org.jspecify.annotations.Nullable;

/**
 * A place in the document's structure, as a screen reader walks it. Two tags are the same place only if they are the same object.
 */
public final class Tag {

    private final Role role;
    private final @Nullable Tag parent;
    private final String spoken;

    private Tag(Role role, @Nullable Tag parent, String spoken) {
        this.role = role;
        this.parent = parent;
        this.spoken = spoken;
    }

    /** Standard structure types of PDF (ISO 32000-1, 14.8.4). */
    public enum Role {
        DOCUMENT("Document"),
        SECTION("Sect"),
        HEADING_1("H1"),
        HEADING_2("H2"),
        PARAGRAPH("P"),
        TABLE("Table"),
        ROW("TR"),
        HEADING_CELL("TH"),
        CELL("TD"),
        FIGURE("Figure");

        private final String type;

        Role(String type) {
            this.type = type;
        }

        String type() {
            return type;
        }
    }

    /** @return the root of a document's structure */
    public static Tag document() {
        return new Tag(Role.DOCUMENT, null, "");
    }

    /** @return a place below this one */
    public Tag child(Role childRole) {
        return new Tag(childRole, this, "");
    }

    /**
     * @param alternative what to say instead of the picture
     * @return a picture below this place
     */
    public Tag figure(String alternative) {
        return new Tag(Role.FIGURE, this, alternative);
    }

    Role role() {
        return role;
    }

    @Nullable Tag parent() {
        return parent;
    }

    String spoken() {
        return spoken;
    }
}
