package org.loomwright.core.electrical.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers the nodes of a net. Nodes that ideal branches join are one. Every connected part has one node at zero volts: the reference
 * in its own part, the first node elsewhere. The others are unknowns, those far from the zero node first, so that elimination goes
 * from the leaves to the root and a tree does not fill.
 */
final class Nodes {

    private static final int GROUNDED = -1;

    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<Branch> branches;
    private final int[] merged;
    private final int[] unknowns;
    private final boolean[] grounded;
    private int unknownCount;

    Nodes(String reference, List<Branch> branches) {
        this.branches = branches;
        number(reference);
        branches.forEach(
                branch -> {
                    number(branch.from());
                    number(branch.to());
                });
        merged = new int[numbers.size()];
        Arrays.setAll(merged, node -> node);
        branches.stream()
                .filter(Branch::isIdeal)
                .forEach(branch -> merge(number(branch.from()), number(branch.to())));
        unknowns = new int[numbers.size()];
        grounded = new boolean[numbers.size()];
        orderUnknowns();
    }

    private int number(String node) {
        return numbers.computeIfAbsent(node, name -> numbers.size());
    }

    private void merge(int one, int other) {
        int a = root(one);
        int b = root(other);
        merged[Math.max(a, b)] = Math.min(a, b);
    }

    private int root(int node) {
        int root = node;
        while (merged[root] != root) {
            merged[root] = merged[merged[root]];
            root = merged[root];
        }
        return root;
    }

    private void orderUnknowns() {
        List<List<Integer>> neighbours = neighbours();
        List<Integer> found = new ArrayList<>();
        boolean[] seen = new boolean[merged.length];
        for (int start = 0; start < merged.length; start++) {
            if (root(start) == start && !seen[start]) {
                unknowns[start] = GROUNDED;
                walk(start, start == 0, neighbours, seen, found);
            }
        }
        unknownCount = found.size();
        for (int i = 0; i < unknownCount; i++) {
            unknowns[found.get(i)] = unknownCount - 1 - i;
        }
    }

    private void walk(
            int start,
            boolean isReference,
            List<List<Integer>> neighbours,
            boolean[] seen,
            List<Integer> found) {
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        seen[start] = true;
        while (!waiting.isEmpty()) {
            int node = waiting.removeFirst();
            grounded[node] = isReference;
            for (int next : neighbours.get(node)) {
                if (!seen[next]) {
                    seen[next] = true;
                    found.add(next);
                    waiting.add(next);
                }
            }
        }
    }

    private List<List<Integer>> neighbours() {
        List<List<Integer>> neighbours = new ArrayList<>();
        for (int node = 0; node < merged.length; node++) {
            neighbours.add(new ArrayList<>());
        }
        for (Branch branch : branches) {
            int from = rootOf(branch.from());
            int to = rootOf(branch.to());
            neighbours.get(from).add(to);
            neighbours.get(to).add(from);
        }
        return neighbours;
    }

    /** The one node that stands for all nodes that are ideally joined with this one. */
    int rootOf(String node) {
        return root(number(node));
    }

    boolean knows(String node) {
        return numbers.containsKey(node);
    }

    /** Whether something connects the node with the reference. */
    boolean isGrounded(String node) {
        return grounded[rootOf(node)];
    }

    /** Number of the unknown, negative for a node at zero volts. */
    int unknown(String node) {
        return unknowns[rootOf(node)];
    }

    int unknownCount() {
        return unknownCount;
    }
}
