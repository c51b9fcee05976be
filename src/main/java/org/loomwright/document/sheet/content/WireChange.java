package org.loomwright.document.sheet.content;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Wire;

import java.util.List;

/**
 * What happens to one wire.
 *
 * @param kind what is done with it
 * @param before the wire in the stock loom, null if it is added
 * @param after the wire in the amended loom, null if it is removed
 * @param made whether a new wire is cut for it
 * @param differences what is other than before, in words; empty for a wire that is added or removed
 * @param reasons the amendments behind it, each by its id with its reason
 */
public record WireChange(
        Kind kind,
        @Nullable Wire before,
        @Nullable Wire after,
        boolean made,
        List<String> differences,
        List<String> reasons) {

    /** What is done with a wire. */
    public enum Kind {
        ADDED,
        CHANGED,
        REMOVED
    }

    public WireChange {
        if (before == null && after == null) {
            throw new IllegalArgumentException("a wire must be there before or after");
        }
        differences = List.copyOf(differences);
        reasons = List.copyOf(reasons);
    }

    /** @return the wire as it will be, or as it was if it goes */
    public Wire wire() {
        if (after != null) {
            return after;
        }
        if (before != null) {
            return before;
        }
        throw new IllegalStateException("neither before nor after");
    }

    /** @return the reasons as one text, each on a line of its own */
    public String why() {
        return String.join("\n", reasons);
    }
}
