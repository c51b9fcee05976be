package org.loomwright.app;

/** There is no such thing. */
public final class NotFoundException extends RefusalException {

    private final String thing;
    private final String id;

    /**
     * @param thing what was looked for, for example {@code loom}
     * @param id by which it was looked for
     */
    public NotFoundException(String thing, String id) {
        super("there is no %s %s".formatted(thing, id));
        this.thing = thing;
        this.id = id;
    }

    /** @return what was looked for, for example {@code loom} */
    public String thing() {
        return thing;
    }

    /** @return the id by which it was looked for */
    public String id() {
        return id;
    }
}
