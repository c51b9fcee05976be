package org.loomwright.app;

import org.jspecify.annotations.Nullable;

import java.util.List;
import java.util.function.Function;

/**
 * A part of a list, newest first.
 *
 * @param items the things on this page
 * @param nextKey where the next page starts, or null on the last one
 * @param <T> what is listed
 */
public record Page<T>(List<T> items, @Nullable PageKey nextKey) {

    /** Most things on one page. */
    public static final int LARGEST = 200;

    public Page {
        items = List.copyOf(items);
    }

    /**
     * @param size things asked for
     * @return the size
     * @throws IllegalArgumentException if it is not between 1 and {@link #LARGEST}
     */
    public static int checkSize(int size) {
        if (size < 1 || size > LARGEST) {
            throw new IllegalArgumentException(
                    "a page has 1 to %d things, asked for %d".formatted(LARGEST, size));
        }
        return size;
    }

    /**
     * @param oneMore up to one thing more than the page holds, which shows whether another page follows
     * @param size things on the page
     * @param key the place of a thing in the list
     * @param <T> what is listed
     * @return the page
     */
    public static <T> Page<T> of(List<T> oneMore, int size, Function<T, PageKey> key) {
        if (oneMore.size() <= size) {
            return new Page<>(oneMore, null);
        }
        List<T> items = oneMore.subList(0, size);
        return new Page<>(items, key.apply(items.getLast()));
    }
}
