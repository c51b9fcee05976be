package org.loomwright.core.electrical.structure;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** A loom with everything that the checks ask of it. */
final class Wiring {

    private final Loom loom;
    private final Catalogue catalogue;
    private final Behaviours behaviours;
    private final Tracing tracing;
    private final Newcomers newcomers;
    private final Map<String, List<Wire>> atPlace = new HashMap<>();
    private final List<Placed> elements = new ArrayList<>();
    private final Map<String, List<Placed>> atNode = new HashMap<>();

    Wiring(
            Loom loom,
            Catalogue catalogue,
            Behaviours behaviours,
            Tracing tracing,
            Newcomers newcomers) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.behaviours = behaviours;
        this.tracing = tracing;
        this.newcomers = newcomers;
        for (Wire wire : loom.wires().values()) {
            at(wire.a()).add(wire);
            at(wire.b()).add(wire);
        }
        loom.devices().values().forEach(device -> elements.addAll(behaviours.of(device)));
        for (Placed element : elements) {
            atNode.computeIfAbsent(element.fromNode(), node -> new ArrayList<>()).add(element);
            atNode.computeIfAbsent(element.toNode(), node -> new ArrayList<>()).add(element);
        }
    }

    private List<Wire> at(WireEnd end) {
        return atPlace.computeIfAbsent(end.place(), place -> new ArrayList<>());
    }

    Loom loom() {
        return loom;
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Behaviours behaviours() {
        return behaviours;
    }

    Tracing tracing() {
        return tracing;
    }

    Newcomers newcomers() {
        return newcomers;
    }

    /** Wires that end there; one with both ends there stands twice. */
    List<Wire> wiresAt(String place) {
        return atPlace.getOrDefault(place, List.of());
    }

    /** Elements that begin or end there. */
    List<Placed> elementsAt(String node) {
        return atNode.getOrDefault(node, List.of());
    }

    List<Placed> elements(Element element) {
        return elements.stream().filter(placed -> placed.element() == element).toList();
    }

    boolean isNew(Device device) {
        return newcomers.isNew(device);
    }

    Optional<String> serviceOf(Device device) {
        return Tracing.serviceOf(device, catalogue).map(Service::code);
    }

    /** The end of a load or coil that a source reaches, the first where both are. */
    Optional<String> feedOf(Placed load) {
        return List.of(load.fromNode(), load.toNode()).stream()
                .filter(node -> tracing.supplyAt(node).isPresent())
                .findFirst();
    }

    /** The other end. */
    static String otherEnd(Placed load, String node) {
        return load.fromNode().equals(node) ? load.toNode() : load.fromNode();
    }

    /** What decides whether a load is fed: its own supply, or that of the coil of the last relay on its way. */
    Optional<Supply> commandOf(Placed load) {
        Optional<String> feed = feedOf(load);
        Optional<Placed> coil = feed.flatMap(this::lastCoil);
        return coil.isPresent()
                ? coil.flatMap(this::feedOf).flatMap(tracing::supplyAt)
                : feed.flatMap(tracing::supplyAt);
    }

    private Optional<Placed> lastCoil(String place) {
        return tracing.pathTo(place).orElse(List.of()).stream()
                .filter(passed -> passed.element() == Element.MAKE)
                .reduce((earlier, later) -> later)
                .flatMap(relay -> coilOf(relay.device()));
    }

    private Optional<Placed> coilOf(String device) {
        return elements(Element.COIL).stream()
                .filter(coil -> coil.device().id().equals(device))
                .findFirst();
    }

    /** Switches on the feed side of a load, of the coils of its relays, and on the earth side of both. */
    SortedSet<String> switchesOf(Placed load) {
        SortedSet<String> switches = new TreeSet<>(feedSwitchesOf(load));
        switches.addAll(earthSwitchesOf(load));
        for (Passed passed : feedOf(load).flatMap(tracing::pathTo).orElse(List.of())) {
            if (passed.element() == Element.MAKE) {
                coilOf(passed.device())
                        .ifPresent(
                                coil -> {
                                    switches.addAll(feedSwitchesOf(coil));
                                    switches.addAll(earthSwitchesOf(coil));
                                });
            }
        }
        return switches;
    }

    private Set<String> feedSwitchesOf(Placed load) {
        Set<String> switches = new HashSet<>();
        for (Passed passed : feedOf(load).flatMap(tracing::pathTo).orElse(List.of())) {
            if (passed.element() == Element.CONTACT) {
                switches.add(passed.device());
            }
        }
        return switches;
    }

    /** Switches between a load and the body, as far as wires and joints lead to them. */
    SortedSet<String> earthSwitchesOf(Placed load) {
        SortedSet<String> switches = new TreeSet<>();
        String start = feedOf(load).map(feed -> otherEnd(load, feed)).orElse(load.toNode());
        if (tracing.isReturn(start)) {
            return switches;
        }
        Set<String> seen = new HashSet<>(Set.of(start));
        Deque<String> waiting = new ArrayDeque<>(seen);
        while (!waiting.isEmpty()) {
            String node = waiting.removeFirst();
            for (Placed element : elementsAt(node)) {
                if (element.element() == Element.CONTACT) {
                    switches.add(element.device().id());
                }
            }
            for (Wire wire : wiresAt(node)) {
                String next = wire.a().place().equals(node) ? wire.b().place() : wire.a().place();
                if (seen.add(next)) {
                    waiting.add(next);
                }
            }
        }
        return switches;
    }
}
