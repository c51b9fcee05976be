package org.loomwright.app;

/**
 * A frozen revision, calculated again, gives other figures than were frozen: the program or its tables have changed since. What was
 * agreed stands; nothing that shows other figures is handed out under its hash.
 */
public final class FiguresChangedException extends RefusalException {

    private final String hash;

    /** @param hash names the revision */
    public FiguresChangedException(String hash) {
        super("revision %s, calculated again, gives other figures".formatted(hash));
        this.hash = hash;
    }

    /** @return names the revision */
    public String hash() {
        return hash;
    }
}
