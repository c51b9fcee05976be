package org.loomwright.app;

/** Somebody else changed the thing after it was read. Read it again and decide anew. */
public final class StaleVersionException extends RefusalException {

    private final String thing;
    private final String id;
    private final long expected;
    private final long actual;

    /**
     * @param thing what was to be changed, for example {@code loom}
     * @param id which one
     * @param expected the version that the change was made from
     * @param actual the version that it has now
     */
    public StaleVersionException(String thing, String id, long expected, long actual) {
        super(
                "%s %s has version %d, the change was made from version %d"
                        .formatted(thing, id, actual, expected));
        this.thing = thing;
        this.id = id;
        this.expected = expected;
        this.actual = actual;
    }

    /** @return what was to be changed, for example {@code loom} */
    public String thing() {
        return thing;
    }

    /** @return which one */
    public String id() {
        return id;
    }

    /** @return the version that the change was made from */
    public long expected() {
        return expected;
    }

    /** @return the version that it has now */
    public long actual() {
        return actual;
    }
}
