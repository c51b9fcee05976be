package org.loomwright.core.catalogue;

/** What a loom passes through or is held by. */
public enum OpeningKind {
    /** A rubber grommet in a panel hole; the clear diameter is its bore. */
    GROMMET("grommet"),
    /** A hole without a grommet. */
    HOLE("hole"),
    /** A tube or a channel of the body. */
    TUBE("tube"),
    /** A clip that closes round the loom. */
    CLIP("clip");

    private final String words;

    OpeningKind(String words) {
        this.words = words;
    }

    /** @return the kind as a reader sees it */
    public String words() {
        return words;
    }
}
