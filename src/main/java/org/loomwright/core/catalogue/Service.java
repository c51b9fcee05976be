package org.loomwright.core.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What a circuit is there for, for example {@code reversing-lamps}.
 *
 * @param code short name used in documents
 * @param name the service in words
 * @param words alternatives, lower case, each of one or more words separated by a space; a device in whose name all words of one stand may
 *     be taken to serve it where nobody said what it serves
 * @param kind which limits it has to keep
 * @param provenance where the row comes from
 */
public record Service(
        String code, String name, List<String> words, CircuitKind kind, Provenance provenance) {

    /** Kinds of circuit that may lose different shares of their voltage. */
    public enum CircuitKind {
        /** Lamps that others must see, or that the driver sees by. */
        LIGHTING,
        /** Motors, heaters, sockets and everything that has no stricter rule. */
        GENERAL,
        /** Coils of relays and solenoids, warning lamps and gauges. */
        CONTROL,
        /** Coil and pump. */
        IGNITION,
        /** Generator to battery. */
        CHARGING,
        /** The starter's main lead. */
        STARTING
    }

    public Service {
        words = List.copyOf(words);
    }

    /** @return whether all words of one of the alternatives stand in the text */
    public boolean isIn(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return words.stream()
                .anyMatch(words -> Arrays.stream(words.split(" ")).allMatch(lower::contains));
    }
}
