package org.loomwright.document.drawing;

/** How a segment stands to the stock loom. */
enum Status {
    /** As in the stock loom, or there is nothing to compare with. */
    UNCHANGED("as stock"),
    /** Other wires run through it. */
    CHANGED("changed: other wires run through it"),
    /** It was not there. */
    NEW("new");

    private final String words;

    Status(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
