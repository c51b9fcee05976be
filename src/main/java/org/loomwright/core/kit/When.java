package org.loomwright.core.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Under which answers a part of a recipe is wanted. All must hold. Beside the questions' ids there are the facts {@code vehicle.earth}
 * ({@code positive} or {@code negative}), {@code vehicle.volts} and, for every key that the recipe looks for, {@code found.key} ({@code yes} or
 * {@code no}).
 *
 * @param allowed by question or fact the answers that will do
 */
public record When(Map<String, Set<String>> allowed) {

    /** Always. */
    public static final When ALWAYS = new When(Map.of());

    public When {
        Map<String, Set<String>> copy = new LinkedHashMap<>();
        allowed.forEach((fact, words) -> copy.put(fact, Set.copyOf(words)));
        allowed = Map.copyOf(copy);
    }

    /**
     * @param facts answers and facts in words
     * @return whether all conditions hold; one whose question was not answered does not
     */
    public boolean holds(Map<String, String> facts) {
        return allowed.entrySet().stream()
                .allMatch(
                        entry -> entry.getValue().contains(facts.getOrDefault(entry.getKey(), "")));
    }
}
