package org.loomwright.app;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.UUID;

/**
 * The place in a list, newest first, after which the next page starts. Things that appear later never move it.
 *
 * @param createdAt when the last thing of the page before was made
 * @param id its id, which decides between things made at the same moment
 */
public record PageKey(Instant createdAt, UUID id) {

    private static final String BETWEEN = "_";
    private static final Instant FIRST = Instant.EPOCH;
    private static final Instant LAST = Instant.parse("9999-12-31T23:59:59Z");

    /**
     * @param text what {@link #toText} wrote
     * @return the key
     * @throws IllegalArgumentException if it does not have that form
     */
    public static PageKey parse(String text) {
        int at = text.indexOf(BETWEEN);
        if (at < 0) {
            throw new IllegalArgumentException("not a page key: '" + text + "'");
        }
        try {
            Instant createdAt = Instant.parse(text.substring(0, at));
            if (createdAt.isBefore(FIRST) || createdAt.isAfter(LAST)) {
                throw new IllegalArgumentException("no page begins at " + createdAt);
            }
            return new PageKey(createdAt, UUID.fromString(text.substring(at + 1)));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("not a page key: '" + text + "'", e);
        }
    }

    /** @return a form without blanks, for an address */
    public String toText() {
        return createdAt + BETWEEN + id;
    }
}
