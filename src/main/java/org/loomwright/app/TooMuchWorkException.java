package org.loomwright.app;

/** A loom is so large that its bundles cannot be packed while somebody waits. */
public final class TooMuchWorkException extends RefusalException {

    private final String loom;

    /** @param loom what the loom is called */
    public TooMuchWorkException(String loom) {
        super("packing the bundles of loom %s takes too long".formatted(loom));
        this.loom = loom;
    }

    /** @return what the loom is called */
    public String loom() {
        return loom;
    }
}
