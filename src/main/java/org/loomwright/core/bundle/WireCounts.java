package org.loomwright.core.bundle;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * How many wires of each colour and size. Immutable; classes in the order of colour, then size; no class with a count of zero.
 *
 * @param byClass count by class
 */
public record WireCounts(SortedMap<WireClass, Integer> byClass) {

    /** No wires. */
    public static final WireCounts NONE = new WireCounts(new TreeMap<>());

    public WireCounts {
        SortedMap<WireClass, Integer> copy = new TreeMap<>(byClass);
        copy.values().removeIf(count -> count == 0);
        byClass = Collections.unmodifiableSortedMap(copy);
    }

    /** @return how many wires in all */
    public int total() {
        return byClass.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** @return count by colour letters, in their order */
    public SortedMap<String, Integer> byColour() {
        return grouped(wireClass -> wireClass.colour().letters());
    }

    /** @return count by conductor size, in the order of the designations */
    public SortedMap<String, Integer> bySize() {
        return grouped(WireClass::size);
    }

    private SortedMap<String, Integer> grouped(Function<WireClass, String> key) {
        SortedMap<String, Integer> grouped = new TreeMap<>();
        byClass.forEach(
                (wireClass, count) -> grouped.merge(key.apply(wireClass), count, Integer::sum));
        return Collections.unmodifiableSortedMap(grouped);
    }

    /**
     * @param other other counts
     * @return what is here and not there, class by class; never negative
     */
    public WireCounts without(WireCounts other) {
        SortedMap<WireClass, Integer> left = new TreeMap<>();
        for (Map.Entry<WireClass, Integer> entry : byClass.entrySet()) {
            int there = other.byClass.getOrDefault(entry.getKey(), 0);
            left.put(entry.getKey(), Math.max(0, entry.getValue() - there));
        }
        return new WireCounts(left);
    }
}
