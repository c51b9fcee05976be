package org.loomwright.core.bundle;

import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.routing.Routes;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * Counts the wires through every segment of one loom without walking the route of each wire.
 *
 * <p>Source: own derivation. Put +1 at both end nodes of a wire and -2 at their turning point; the sum over everything beyond a
 * segment is then the number of wires through it. Cost: O(wires x log n) plus the sum over the nodes of the classes beyond them,
 * merged small into large.
 */
final class SegmentCounts {

    private final Map<String, Map<WireClass, Integer>> atNode = new HashMap<>();

    private SegmentCounts() {}

    /** Counts by segment id, in walking order. */
    static Map<String, WireCounts> of(Loom loom, Routes routes) {
        SegmentCounts counts = new SegmentCounts();
        loom.wires().values().forEach(wire -> counts.mark(loom, routes, wire));
        Map<String, WireCounts> bySegment = new HashMap<>();
        for (Segment segment : loom.walk().reversed()) {
            bySegment.put(segment.id(), counts.closeOff(segment));
        }
        Map<String, WireCounts> inOrder = new LinkedHashMap<>();
        loom.walk()
                .forEach(
                        segment ->
                                inOrder.put(
                                        segment.id(),
                                        bySegment.getOrDefault(segment.id(), WireCounts.NONE)));
        return inOrder;
    }

    private void mark(Loom loom, Routes routes, Wire wire) {
        String a = loom.getPoint(wire.a()).node();
        String b = loom.getPoint(wire.b()).node();
        WireClass wireClass = new WireClass(wire.colour(), wire.size());
        add(a, wireClass, 1);
        add(b, wireClass, 1);
        add(routes.turningPoint(a, b), wireClass, -2);
    }

    private void add(String node, WireClass wireClass, int count) {
        atNode.computeIfAbsent(node, id -> new HashMap<>()).merge(wireClass, count, Integer::sum);
    }

    /** What is marked at and beyond the segment's far node runs through it; hand it on to the near node. */
    private WireCounts closeOff(Segment segment) {
        Map<WireClass, Integer> beyond = atNode.getOrDefault(segment.to(), new HashMap<>());
        beyond.values().removeIf(count -> count == 0);
        atNode.remove(segment.to());
        WireCounts counts = new WireCounts(new TreeMap<>(beyond));
        atNode.merge(segment.from(), beyond, SegmentCounts::merge);
        return counts;
    }

    private static Map<WireClass, Integer> merge(
            Map<WireClass, Integer> one, Map<WireClass, Integer> other) {
        Map<WireClass, Integer> large = one.size() >= other.size() ? one : other;
        Map<WireClass, Integer> small = large == one ? other : one;
        small.forEach((wireClass, count) -> large.merge(wireClass, count, Integer::sum));
        return large;
    }
}
