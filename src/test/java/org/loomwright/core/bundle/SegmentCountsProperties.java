package org.loomwright.core.bundle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.routing.Routes;
import org.loomwright.testing.RandomLooms;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** Held against walking the route of every wire. */
class SegmentCountsProperties {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void countsAgreeWithWalkingEveryRoute(long seed) {
        Loom loom = RandomLooms.of(seed, RandomLooms.Size.CAR);
        Routes routes = new Routes(loom);

        Map<String, Map<WireClass, Integer>> expected = new HashMap<>();
        loom.segments().keySet().forEach(id -> expected.put(id, new TreeMap<>()));
        for (Wire wire : loom.wires().values()) {
            for (Segment segment : routes.of(wire)) {
                expected.computeIfAbsent(segment.id(), id -> new TreeMap<>())
                        .merge(new WireClass(wire.colour(), wire.size()), 1, Integer::sum);
            }
        }
        Map<String, WireCounts> counted = SegmentCounts.of(loom, routes);

        assertThat(counted.keySet()).isEqualTo(expected.keySet());
        counted.forEach(
                (segment, counts) ->
                        assertThat(counts.byClass())
                                .as("segment %s", segment)
                                .isEqualTo(expected.get(segment)));
    }
}
