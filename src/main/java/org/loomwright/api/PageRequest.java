package org.loomwright.api;

import io.swagger.v3.oas.annotations.media.Schema;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.Page;
import org.loomwright.app.PageKey;

import java.util.List;
import java.util.function.Function;

/**
 * Which part of a list is asked for.
 *
 * @param after where it starts, or null for the newest
 * @param size how many things
 */
record PageRequest(@Nullable PageKey after, int size) {

    /**
     * @param after {@code nextAfter} of the page before, or null
     * @param size how many things
     * @return the request
     * @throws InvalidRequestException if one of them makes no sense
     */
    static PageRequest of(@Nullable String after, int size) {
        if (size < 1 || size > Page.LARGEST) {
            throw InvalidRequestException.of(
                    "page.size-out-of-range",
                    "The parameter 'size' must be 1 to %d, was %d.".formatted(Page.LARGEST, size));
        }
        try {
            return new PageRequest(after == null ? null : PageKey.parse(after), size);
        } catch (IllegalArgumentException e) {
            throw InvalidRequestException.of(
                    "page.after-malformed",
                    "The parameter 'after' must be the 'nextAfter' of a page before.");
        }
    }

    /**
     * A part of a list.
     *
     * @param items the things
     * @param nextAfter the parameter {@code after} of the next page, or null on the last
     */
    record Listed<T>(
            List<T> items,
            @Schema(types = {OpenApiSchemas.TEXT, OpenApiSchemas.NULL})
                    @Nullable String nextAfter) {}

    static <T, R> Listed<R> listed(Page<T> page, Function<T, R> change) {
        PageKey next = page.nextKey();
        return new Listed<>(
                page.items().stream().map(change).toList(), next == null ? null : next.toText());
    }
}
