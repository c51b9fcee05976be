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

    private final Map<String, Double> entering = new HashMap<>();
    private final Map<String, List<Branch>> atNode = new HashMap<>();
    private final Map<String, Double> amperes = new HashMap<>();
    private final Set<String> undetermined = new HashSet<>();

    /**
     * @param branches the whole net
     * @param known currents of the branches that have a resistance
     */
    IdealCurrents(List<Branch> branches, Map<String, Double> known) {
        List<Branch> ideal = new ArrayList<>();
        for (Branch branch : branches) {
            if (branch.isIdeal()) {
                ideal.add(branch);
                atNode.computeIfAbsent(branch.from(), node -> new ArrayList<>()).add(branch);
                atNode.computeIfAbsent(branch.to(), node -> new ArrayList<>()).add(branch);
            } else {
                double current = known.getOrDefault(branch.id(), 0.0);
                entering.merge(branch.to(), current, Double::sum);
                entering.merge(branch.from(), -current, Double::sum);
            }
        }
        Set<String> seen = new HashSet<>();
        for (Branch branch : ideal) {
            if (seen.add(branch.from())) {
                spread(branch.from(), seen);
            }
        }
    }

    private record Step(String parent, String node, Branch branch) {}

    private void spread(String root, Set<String> seen) {
        List<Step> steps = new ArrayList<>();
        Set<String> used = new HashSet<>();
        Deque<String> waiting = new ArrayDeque<>(List.of(root));
        while (!waiting.isEmpty()) {
            String node = waiting.removeFirst();
            for (Branch branch : atNode.getOrDefault(node, List.of())) {
                if (!used.add(branch.id())) {
                    continue;
                }
                String other = branch.from().equals(node) ? branch.to() : branch.from();
                if (seen.add(other)) {
                    steps.add(new Step(node, other, branch));
                    waiting.add(other);
                } else {
                    amperes.put(branch.id(), 0.0);
                    undetermined.add(branch.id());
                }
            }
        }
        steps.reversed().forEach(this::pass);
    }

    /** All that enters at the node and beyond it goes on to its parent. */
    private void pass(Step step) {
        double current = entering.getOrDefault(step.node(), 0.0);
        entering.merge(step.parent(), current, Double::sum);
        boolean towardsParent = step.branch().to().equals(step.parent());
        amperes.put(step.branch().id(), towardsParent ? current : -current);
    }

    Map<String, Double> amperes() {
        return amperes;
    }

    Set<String> undetermined() {
        return undetermined;
    }
}
