package org.loomwright.core.electrical.tracing;

import org.loomwright.core.electrical.simulation.Behaviour;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/** The net of a loom as steps from node to node, every contact closed, and the best ways through it (Dijkstra). */
final class Ways {

    private static final int FROM_BATTERY = 0;
    private static final int FROM_GENERATOR = 1;

    private final Map<String, List<Step>> steps = new HashMap<>();
    private final List<Reached> sources = new ArrayList<>();
    private final List<Placed> loads = new ArrayList<>();
    private final Map<String, Reached> toBody;
    private final Map<String, Reached> fromSource;

    Ways(Loom loom, Behaviours behaviours) {
        for (Wire wire : loom.wires().values()) {
            add(Step.along(wire, true));
            add(Step.along(wire, false));
        }
        for (Device device : loom.devices().values()) {
            behaviours.of(device).forEach(this::add);
        }
        toBody =
                search(
                        List.of(Reached.start(Behaviour.BODY, FROM_BATTERY)),
                        step -> !step.isLoad(),
                        node -> true);
        fromSource = search(sources, step -> true, node -> !isReturn(node));
    }

    private void add(Placed element) {
        switch (element.element()) {
            case SOURCE -> sources.add(Reached.start(element.fromNode(), FROM_BATTERY));
            case GENERATOR -> sources.add(Reached.start(element.fromNode(), FROM_GENERATOR));
            case CUT_OUT -> add(Step.through(element, true));
            case LINK, FUSE, CONTACT, SENSE, MAKE, BREAK, ENGINE_OFF, EARTH -> addBothWays(element);
            case LOAD, COIL, FIELD -> {
                loads.add(element);
                addBothWays(element);
            }
            case NONE -> {
                // of no account for direct current
            }
        }
    }

    private void addBothWays(Placed element) {
        add(Step.through(element, true));
        add(Step.through(element, false));
    }

    private void add(Step step) {
        steps.computeIfAbsent(step.from(), node -> new ArrayList<>()).add(step);
    }

    private Map<String, Reached> search(
            List<Reached> starts, Predicate<Step> mayTake, Predicate<String> mayLeave) {
        Map<String, Reached> found = new HashMap<>();
        PriorityQueue<Reached> waiting = new PriorityQueue<>(Reached.BEST_FIRST);
        waiting.addAll(starts);
        while (!waiting.isEmpty()) {
            Reached next = waiting.remove();
            if (found.putIfAbsent(next.node(), next) == null && mayLeave.test(next.node())) {
                for (Step step : steps.getOrDefault(next.node(), List.of())) {
                    if (mayTake.test(step) && !found.containsKey(step.to())) {
                        waiting.add(next.then(step));
                    }
                }
            }
        }
        return found;
    }

    /** Loads and coils with the points between which they stand. */
    List<Placed> loads() {
        return loads;
    }

    /** The best way from a source to each node that one reaches; ways end at the body and at returns. */
    Map<String, Reached> fromSource() {
        return fromSource;
    }

    /** The best way from the body, not through loads, to each node that it reaches. */
    Map<String, Reached> toBody() {
        return toBody;
    }

    /** Whether copper and earth screws alone join the node to the body. */
    boolean isReturn(String node) {
        Reached reached = toBody.get(node);
        return reached != null && reached.conditions() == 0;
    }

    static boolean isGenerator(Reached reached) {
        return reached.start() == FROM_GENERATOR
                && reached.path().stream().noneMatch(it -> it.element() == Element.CUT_OUT);
    }
}
