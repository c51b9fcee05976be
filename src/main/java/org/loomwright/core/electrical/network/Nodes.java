package org.loomwright.core.electrical.network;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers the nodes of a net. Nodes that ideal branches join are one. Every connected part has one node at zero volts: the reference
 * in its own part, the first node elsewhere. The others are unknowns, in {@link EliminationOrder}.
 */
final class Nodes {

    private static final int REFERENCE = 0;
    private static final int NO_UNKNOWN = -1;

    private final Map<String, Integer> numbers = new HashMap<>();
    private final int[] from;
    private final int[] to;
    private final int[] merged;
    private final int[] parts;
    private final int[] unknowns;
    private int unknownCount;

    Nodes(String reference, List<Branch> branches) {
        from = new int[branches.size()];
        to = new int[branches.size()];
        number(reference);
        for (int i = 0; i < from.length; i++) {
            from[i] = number(branches.get(i).from());
            to[i] = number(branches.get(i).to());
        }
        merged = new int[numbers.size()];
        Arrays.setAll(merged, node -> node);
        for (int i = 0; i < from.length; i++) {
            if (branches.get(i).isIdeal()) {
                merge(merged, from[i], to[i]);
            }
        }
        parts = merged.clone();
        for (int i = 0; i < from.length; i++) {
            merge(parts, from[i], to[i]);
        }
        unknowns = new int[numbers.size()];
        numberUnknowns();
    }

    private int number(String node) {
        Integer known = numbers.putIfAbsent(node, numbers.size());
        return known == null ? numbers.size() - 1 : known;
    }

    private static void merge(int[] trees, int one, int other) {
        int a = root(trees, one);
        int b = root(trees, other);
        trees[Math.max(a, b)] = Math.min(a, b);
    }

    /** The least number of all that are in the same tree. */
    private static int root(int[] trees, int node) {
        int root = node;
        while (trees[root] != root) {
            trees[root] = trees[trees[root]];
            root = trees[root];
        }
        return root;
    }

    private void numberUnknowns() {
        for (int node = 0; node < unknowns.length; node++) {
            boolean isUnknown = rootOf(node) == node && root(parts, node) != node;
            unknowns[node] = isUnknown ? unknownCount++ : NO_UNKNOWN;
        }
        int[] places = new EliminationOrder(unknownCount, unknowns(from), unknowns(to)).places();
        for (int node = 0; node < unknowns.length; node++) {
            if (unknowns[node] != NO_UNKNOWN) {
                unknowns[node] = places[unknowns[node]];
            }
        }
    }

    private int[] unknowns(int[] nodes) {
        return Arrays.stream(nodes).map(node -> unknowns[rootOf(node)]).toArray();
    }

    private int rootOf(int node) {
        return root(merged, node);
    }

    int count() {
        return merged.length;
    }

    /** Number of the node where the branch begins, ideal branches or not. */
    int from(int branch) {
        return from[branch];
    }

    /** Number of the node where the branch ends. */
    int to(int branch) {
        return to[branch];
    }

    /** For every branch the unknown where it begins, negative where that is a node at zero volts. */
    int[] unknownsFrom() {
        return unknowns(from);
    }

    /** For every branch the unknown where it ends, negative where that is a node at zero volts. */
    int[] unknownsTo() {
        return unknowns(to);
    }

    boolean knows(String node) {
        return numbers.containsKey(node);
    }

    /** Whether something connects the node with the reference; false for a node that the net does not have. */
    boolean isGrounded(String node) {
        Integer number = numbers.get(node);
        return number != null && root(parts, number) == REFERENCE;
    }

    /** Number of the unknown, negative for a node at zero volts. */
    int unknown(String node) {
        return unknowns[rootOf(numbers.getOrDefault(node, REFERENCE))];
    }

    int unknownCount() {
        return unknownCount;
    }
}
