package org.loomwright.core.period;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;

import java.util.List;

/**
 * A place on the vehicle and whether things there can be seen.
 *
 * @param words lower case; one of them in the name of a node or device tells that it is there
 * @param name the place in words
 * @param device whether the thing itself is seen, or null where the name does not tell
 * @param wires whether the ends of its wires are seen, or null where the name does not tell
 * @param provenance where that comes from
 */
public record Place(
        List<String> words,
        String name,
        @Nullable Boolean device,
        @Nullable Boolean wires,
        Provenance provenance) {

    public Place {
        words = List.copyOf(words);
    }

    boolean isIn(String lowerCase) {
        return words.stream().anyMatch(lowerCase::contains);
    }
}
