package org.loomwright.core.electrical.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What flows through branches without resistance: in each group that they join a spanning tree is taken, and every branch of it carries
 * what enters beyond it. A branch that closes a loop gets nothing and is listed.
 */
final class IdealCurrents {

    private final Network network;
    private final double[] entering;
    private final Map<Integer, List<Integer>> atNode = new HashMap<>();
    private final double[] amperes;
    private final Set<String> undetermined = new HashSet<>();

    /**
     * @param network the whole net
     * @param known currents of its branches, as far as they have a resistance
     */
    IdealCurrents(Network network, double[] known) {
        this.network = network;
        this.amperes = known.clone();
        this.entering = new double[network.nodes().count()];
        List<Integer> ideal = new ArrayList<>();
        for (int branch = 0; branch < known.length; branch++) {
            if (network.branches().get(branch).isIdeal()) {
                ideal.add(branch);
                atNode.computeIfAbsent(from(branch), node -> new ArrayList<>()).add(branch);
                atNode.computeIfAbsent(to(branch), node -> new ArrayList<>()).add(branch);
            } else {
                entering[to(branch)] += known[branch];
                entering[from(branch)] -= known[branch];
            }
        }
        Set<Integer> seen = new HashSet<>();
        for (int branch : ideal) {
            if (seen.add(from(branch))) {
                spread(from(branch), seen);
            }
        }
    }

    private int from(int branch) {
        return network.nodes().from(branch);
    }

    private int to(int branch) {
        return network.nodes().to(branch);
    }

    private record Step(int parent, int node, int branch) {}

    private void spread(int root, Set<Integer> seen) {
        List<Step> steps = new ArrayList<>();
        Set<Integer> used = new HashSet<>();
        Deque<Integer> waiting = new ArrayDeque<>(List.of(root));
        while (!waiting.isEmpty()) {
            int node = waiting.removeFirst();
            for (int branch : atNode.getOrDefault(node, List.of())) {
                if (!used.add(branch)) {
                    continue;
                }
                int other = from(branch) == node ? to(branch) : from(branch);
                if (seen.add(other)) {
                    steps.add(new Step(node, other, branch));
                    waiting.add(other);
                } else {
                    undetermined.add(network.branches().get(branch).id());
                }
            }
        }
        steps.reversed().forEach(this::pass);
    }

    /** All that enters at the node and beyond it goes on to its parent. */
    private void pass(Step step) {
        double current = entering[step.node()];
        entering[step.parent()] += current;
        boolean towardsParent = to(step.branch()) == step.parent();
        amperes[step.branch()] = towardsParent ? current : -current;
    }

    /** Of all branches. */
    double[] amperes() {
        return amperes;
    }

    Set<String> undetermined() {
        return undetermined;
    }
}
