package org.loomwright.core.electrical.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;

class EliminationOrderTest {

    /** Pairs that elimination in that order joins beside those that were joined before, counted by doing it. */
    private static int fill(int nodes, int[] from, int[] to) {
        int[] places = new EliminationOrder(nodes, from, to).places();
        assertThat(Arrays.stream(places).sorted().toArray())
                .isEqualTo(IntStream.range(0, nodes).toArray());
        List<TreeSet<Integer>> later = new ArrayList<>();
        IntStream.range(0, nodes).forEach(place -> later.add(new TreeSet<>()));
        for (int i = 0; i < from.length; i++) {
            int one = Math.min(places[from[i]], places[to[i]]);
            later.get(one).add(Math.max(places[from[i]], places[to[i]]));
        }
        int fill = 0;
        for (TreeSet<Integer> after : later) {
            while (after.size() > 1) {
                int first = after.removeFirst();
                for (int other : after) {
                    fill += later.get(first).add(other) ? 1 : 0;
                }
            }
        }
        return fill;
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 10, 100, 1_000})
    void aTreeDoesNotFill(int nodes) {
        Random random = new Random(nodes);
        int[] from = IntStream.range(1, nodes).map(random::nextInt).toArray();
        int[] to = IntStream.range(1, nodes).toArray();
        assertThat(fill(nodes, from, to)).isZero();
    }

    /** Far from the first node, so that an order by distance alone would join all its neighbours with one another. */
    @Test
    void aHubWithTwoHundredBranchesDoesNotFill() {
        int[] from = new int[400];
        int[] to = new int[400];
        for (int i = 0; i < 200; i++) {
            to[i] = 1 + i;
            from[200 + i] = 1 + i;
            to[200 + i] = 201;
        }
        assertThat(fill(202, from, to)).isEqualTo(1);
    }

    @Test
    void branchesThatLieSideBySideOrEndWhereTheyBeginOrAtNoUnknownCountOnce() {
        int[] from = {0, 1, 0, 2, -1};
        int[] to = {1, 0, 1, 2, 2};
        assertThat(new EliminationOrder(3, from, to).places()).containsExactlyInAnyOrder(0, 1, 2);
    }

    @Test
    void aRingFillsNoMoreThanItMust() {
        int nodes = 50;
        int[] from = IntStream.range(0, nodes).toArray();
        int[] to = IntStream.range(0, nodes).map(node -> (node + 1) % nodes).toArray();
        assertThat(fill(nodes, from, to)).isEqualTo(nodes - 3);
    }
}
