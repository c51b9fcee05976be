package org.loomwright.core.routing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.loomwright.testing.RandomLooms;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Held against the plainest possible way: climb from both nodes to the datum and drop what is shared. */
class RoutesProperties {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void routesAndDistancesAgreeWithClimbingToTheDatum(long seed) {
        Loom loom = RandomLooms.of(seed, new RandomLooms.Size(120, 10, 20, 5));
        Routes routes = new Routes(loom);
        Random random = new Random(seed);
        List<String> nodes = List.copyOf(loom.nodes().keySet());
        for (int i = 0; i < 300; i++) {
            String from = nodes.get(random.nextInt(nodes.size()));
            String to = nodes.get(random.nextInt(nodes.size()));
            List<Segment> expected = byClimbing(loom, from, to);
            assertThat(routes.between(from, to)).isEqualTo(expected);
            assertThat(routes.distance(from, to))
                    .isEqualTo(Length.sum(expected.stream().map(Segment::length).toList()));
        }
    }

    private static List<Segment> byClimbing(Loom loom, String from, String to) {
        Set<Segment> up = new LinkedHashSet<>(climb(loom, from));
        Set<Segment> down = new LinkedHashSet<>(climb(loom, to));
        Set<Segment> shared = new LinkedHashSet<>(up);
        shared.retainAll(down);
        up.removeAll(shared);
        down.removeAll(shared);
        List<Segment> route = new ArrayList<>(up);
        route.addAll(new ArrayList<>(down).reversed());
        return route;
    }

    private static List<Segment> climb(Loom loom, String node) {
        List<Segment> segments = new ArrayList<>();
        String at = node;
        while (loom.findArriving(at).isPresent()) {
            Segment segment = loom.findArriving(at).orElseThrow();
            segments.add(segment);
            at = segment.from();
        }
        return segments;
    }
}
