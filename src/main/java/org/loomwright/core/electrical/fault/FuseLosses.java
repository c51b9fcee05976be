package org.loomwright.core.electrical.fault;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Behaviour;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.loom.Loom;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which consumers go dark if one fuse opens, whatever is switched on: every contact counts as closed. A relay whose coil loses its feed lets
 * go, and what it feeds goes dark too. A consumer that keeps another way from a source keeps its light. Cost: for each fuse a few
 * walks through the net. Immutable and thread-safe.
 */
public final class FuseLosses {

    private final Map<String, Integer> nodes = new HashMap<>();
    private final List<List<Edge>> edges = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final Set<String> relays = new HashSet<>();
    private final int body;

    /** A way from node to node: a wire, or a conductor of a device. */
    private record Edge(int to, @Nullable Placed element) {}

    /** An element with its nodes. */
    private record Part(Placed placed, int from, int to) {

        boolean is(Element element) {
            return placed.element() == element;
        }
    }

    /**
     * @param loom a proven loom
     * @param behaviours what devices do
     */
    public FuseLosses(Loom loom, Behaviours behaviours) {
        body = node(Behaviour.BODY);
        loom.wires()
                .values()
                .forEach(wire -> join(node(wire.a().place()), node(wire.b().place()), null));
        loom.devices().values().forEach(device -> behaviours.of(device).forEach(this::add));
    }

    private int node(String name) {
        Integer known = nodes.putIfAbsent(name, nodes.size());
        if (known != null) {
            return known;
        }
        edges.add(new ArrayList<>());
        return nodes.size() - 1;
    }

    private void add(Placed element) {
        Part part = new Part(element, node(element.fromNode()), node(element.toNode()));
        parts.add(part);
        if (isConductor(element)) {
            join(part.from(), part.to(), element);
        }
        if (element.element() == Element.COIL) {
            relays.add(element.device().id());
        }
    }

    private static boolean isConductor(Placed element) {
        return switch (element.element()) {
            case CUT_OUT, LINK, FUSE, CONTACT, SENSE, MAKE, BREAK, ENGINE_OFF -> true;
            case SOURCE, GENERATOR, COIL, FIELD, LOAD, EARTH, NONE -> false;
        };
    }

    private void join(int one, int other, @Nullable Placed element) {
        edges.get(one).add(new Edge(other, element));
        edges.get(other).add(new Edge(one, element));
    }

    /** @return every fuse of the loom, in the order of devices and points */
    public List<FuseLoss> all() {
        BitSet before = live(null);
        return parts.stream()
                .filter(part -> part.is(Element.FUSE))
                .map(Part::placed)
                .map(
                        fuse ->
                                new FuseLoss(
                                        fuse.device().id(),
                                        fuse.from(),
                                        fuse.to(),
                                        dark(fuse, before)))
                .toList();
    }

    private SortedSet<String> dark(Placed fuse, BitSet before) {
        BitSet lost = (BitSet) before.clone();
        lost.andNot(live(fuse));
        SortedSet<String> dark = new TreeSet<>();
        for (Part part : parts) {
            if (part.is(Element.LOAD) && (lost.get(part.from()) || lost.get(part.to()))) {
                dark.add(part.placed().device().id());
            }
        }
        return dark;
    }

    /** The nodes that a source reaches without that fuse, once every relay without a feed has let go. */
    private BitSet live(@Nullable Placed without) {
        Set<String> resting = new HashSet<>();
        while (true) {
            BitSet live = walk(without, resting);
            Set<String> letGo = new HashSet<>(relays);
            for (Part part : parts) {
                if (part.is(Element.COIL) && (live.get(part.from()) || live.get(part.to()))) {
                    letGo.remove(part.placed().device().id());
                }
            }
            if (!resting.addAll(letGo)) {
                return live;
            }
        }
    }

    private BitSet walk(@Nullable Placed without, Set<String> resting) {
        BitSet live = new BitSet(edges.size());
        Deque<Integer> waiting = new ArrayDeque<>();
        parts.stream()
                .filter(FuseLosses::isSource)
                .forEach(part -> reach(part.from(), live, waiting));
        while (!waiting.isEmpty()) {
            for (Edge edge : edges.get(waiting.removeFirst())) {
                if (edge.to() != body && isWhole(edge.element(), without, resting)) {
                    reach(edge.to(), live, waiting);
                }
            }
        }
        return live;
    }

    private static void reach(int node, BitSet live, Deque<Integer> waiting) {
        if (!live.get(node)) {
            live.set(node);
            waiting.add(node);
        }
    }

    private static boolean isSource(Part part) {
        return part.is(Element.SOURCE) || part.is(Element.GENERATOR);
    }

    private static boolean isWhole(
            @Nullable Placed element, @Nullable Placed without, Set<String> resting) {
        if (element == null) {
            return true;
        }
        boolean hasLetGo =
                element.element() == Element.MAKE && resting.contains(element.device().id());
        return !element.equals(without) && !hasLetGo;
    }
}
