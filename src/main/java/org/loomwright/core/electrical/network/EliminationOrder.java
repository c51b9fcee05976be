package org.loomwright.core.electrical.network;

import java.util.Arrays;

/**
 * An order in which the nodes of a net are eliminated so that its matrix fills little: always the node that has fewest neighbours left, of
 * several the one that came down to so few first. A tree does not fill, whatever hangs on one node; a net of few loops fills little.
 *
 * <p>Source: the plain minimum degree algorithm, as in A. George, J. W. H. Liu, "The evolution of the minimum degree ordering algorithm",
 * SIAM Review 31 (1989). Neighbours are kept as lists, so a node of degree d costs d².
 */
final class EliminationOrder {

    private static final int NONE = -1;

    private final int[][] neighbours;
    private final int[] degrees;
    private final int[] firstOfDegree;
    private final int[] next;
    private final int[] previous;
    private int least;

    /**
     * @param nodes how many there are
     * @param from one end of each branch, negative where it is no unknown
     * @param to the other
     */
    EliminationOrder(int nodes, int[] from, int[] to) {
        neighbours = new int[nodes][0];
        degrees = new int[nodes];
        firstOfDegree = new int[nodes + 1];
        next = new int[nodes];
        previous = new int[nodes];
        Arrays.fill(firstOfDegree, NONE);
        for (int i = 0; i < from.length; i++) {
            if (from[i] >= 0 && to[i] >= 0 && from[i] != to[i]) {
                join(from[i], to[i]);
            }
        }
        for (int node = nodes - 1; node >= 0; node--) {
            enter(node);
        }
    }

    private void join(int one, int other) {
        if (!areJoined(one, other)) {
            append(one, other);
            append(other, one);
        }
    }

    /** Asked of the node with fewer neighbours: a hub has hundreds. */
    private boolean areJoined(int one, int other) {
        boolean swap = degrees[one] > degrees[other];
        int asked = swap ? other : one;
        int wanted = swap ? one : other;
        for (int i = 0; i < degrees[asked]; i++) {
            if (neighbours[asked][i] == wanted) {
                return true;
            }
        }
        return false;
    }

    private void append(int node, int neighbour) {
        if (degrees[node] == neighbours[node].length) {
            neighbours[node] = Arrays.copyOf(neighbours[node], 2 * degrees[node] + 3);
        }
        neighbours[node][degrees[node]++] = neighbour;
    }

    private void enter(int node) {
        int first = firstOfDegree[degrees[node]];
        next[node] = first;
        previous[node] = NONE;
        if (first != NONE) {
            previous[first] = node;
        }
        firstOfDegree[degrees[node]] = node;
        least = Math.min(least, degrees[node]);
    }

    private void leave(int node) {
        if (previous[node] == NONE) {
            firstOfDegree[degrees[node]] = next[node];
        } else {
            next[previous[node]] = next[node];
        }
        if (next[node] != NONE) {
            previous[next[node]] = previous[node];
        }
    }

    /** The place of every node in the order. */
    int[] places() {
        int[] places = new int[degrees.length];
        for (int place = 0; place < places.length; place++) {
            while (firstOfDegree[least] == NONE) {
                least++;
            }
            int node = firstOfDegree[least];
            places[node] = place;
            eliminate(node);
        }
        return places;
    }

    /** What a node joined is joined directly once it is gone. */
    private void eliminate(int node) {
        leave(node);
        int[] around = Arrays.copyOf(neighbours[node], degrees[node]);
        for (int one : around) {
            leave(one);
            remove(one, node);
        }
        for (int i = 0; i < around.length; i++) {
            for (int j = 0; j < i; j++) {
                join(around[i], around[j]);
            }
        }
        for (int one : around) {
            enter(one);
        }
    }

    private void remove(int node, int neighbour) {
        int[] list = neighbours[node];
        int at = 0;
        while (list[at] != neighbour) {
            at++;
        }
        list[at] = list[--degrees[node]];
    }
}
