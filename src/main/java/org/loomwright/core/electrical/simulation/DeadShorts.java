package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.network.Branch;
import org.loomwright.core.electrical.simulation.Settling.Settled;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Current;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Ways from one side of a source to its other side on which nothing uses the current: the fewest steps, by breadth-first search. */
final class DeadShorts {

    private final Settled settled;
    private final String scenario;
    private final Map<String, List<Branch>> conductors = new HashMap<>();

    DeadShorts(Settled settled, String scenario) {
        this.settled = settled;
        this.scenario = scenario;
        Set<String> others = new HashSet<>();
        for (Placed element : settled.elements()) {
            if (!element.element().isConductor()) {
                others.add(element.id());
            }
        }
        settled.network().branches().stream()
                .filter(branch -> !others.contains(branch.id()))
                .sorted((one, other) -> one.id().compareTo(other.id()))
                .forEach(this::join);
    }

    private void join(Branch branch) {
        conductors.computeIfAbsent(branch.from(), node -> new ArrayList<>()).add(branch);
        conductors.computeIfAbsent(branch.to(), node -> new ArrayList<>()).add(branch);
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Placed element : settled.elements()) {
            if (isSource(element)) {
                path(element.fromNode(), element.toNode())
                        .ifPresent(path -> findings.add(finding(element, path)));
            }
        }
        return findings;
    }

    private boolean isSource(Placed element) {
        return element.element() == Element.SOURCE
                || element.element() == Element.GENERATOR
                        && settled.state().modeOf(element).gives();
    }

    private Optional<List<Branch>> path(String from, String to) {
        Map<String, Branch> arrivals = new HashMap<>();
        Deque<String> waiting = new ArrayDeque<>(List.of(from));
        Set<String> seen = new HashSet<>(Set.of(from));
        while (!waiting.isEmpty() && !seen.contains(to)) {
            String node = waiting.removeFirst();
            for (Branch branch : conductors.getOrDefault(node, List.of())) {
                String next = other(branch, node);
                if (seen.add(next)) {
                    arrivals.put(next, branch);
                    waiting.add(next);
                }
            }
        }
        return seen.contains(to) ? Optional.of(back(to, from, arrivals)) : Optional.empty();
    }

    private static List<Branch> back(String to, String from, Map<String, Branch> arrivals) {
        List<Branch> path = new ArrayList<>();
        String node = to;
        while (!node.equals(from)) {
            Branch branch = Objects.requireNonNull(arrivals.get(node));
            path.add(branch);
            node = other(branch, node);
        }
        return path.reversed();
    }

    private static String other(Branch branch, String node) {
        return branch.from().equals(node) ? branch.to() : branch.from();
    }

    private Finding finding(Placed source, List<Branch> path) {
        Current current = settled.solution().current(source.id());
        return Finding.fault(
                "electrical.dead-short",
                Subject.of(ThingKind.DEVICE, source.device().id()),
                "In scenario '%s' nothing uses the current on the way from %s; about %d A would flow."
                        .formatted(
                                scenario,
                                words(source, path),
                                Math.round(current.toDoubleAmperes())));
    }

    private static String words(Placed source, List<Branch> path) {
        List<String> places = new ArrayList<>(List.of(source.fromNode()));
        String node = source.fromNode();
        for (Branch branch : path) {
            if (branch.id().startsWith(Circuit.WIRE)) {
                places.add(branch.id());
            }
            node = other(branch, node);
            places.add(node);
        }
        return String.join(" - ", places);
    }
}
