package org.loomwright.core.colour;

import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;

import java.util.HashMap;
import java.util.Map;

/** Which wires are joined by nothing but copper: those that share a point, and those that share one with them (union by halving paths). */
final class Nets {

    private final Map<String, String> parents = new HashMap<>();

    Nets(Loom loom) {
        for (Wire wire : loom.wires().values()) {
            parents.put(find(wire.a().place()), find(wire.b().place()));
        }
    }

    private String find(String place) {
        String at = place;
        String above = parents.getOrDefault(at, at);
        while (!above.equals(at)) {
            String next = parents.getOrDefault(above, above);
            parents.put(at, next);
            at = above;
            above = next;
        }
        return at;
    }

    /** The net of {@code device/point}, named by one of its places. */
    String of(String place) {
        String at = place;
        while (!parents.getOrDefault(at, at).equals(at)) {
            at = parents.getOrDefault(at, at);
        }
        return at;
    }
}
