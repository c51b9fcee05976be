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
            return new PageKey(
                    Instant.parse(text.substring(0, at)), UUID.fromString(text.substring(at + 1)));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("not a page key: '" + text + "'", e);
        }
    }

    /** @return a form without blanks, for an address */
    public String toText() {
        return createdAt + BETWEEN + id;
    }
}
