package org.loomwright.core.electrical.fault;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Behaviour;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.loom.Loom;

import java.util.ArrayDeque;
import java.util.ArrayList;
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

    private final Map<String, List<Edge>> edges = new HashMap<>();
    private final List<Placed> elements = new ArrayList<>();
    private final Set<String> relays = new HashSet<>();

    /** A way from node to node: a wire, or a conductor of a device. */
    private record Edge(String to, @Nullable Placed element) {}

    /**
     * @param loom a proven loom
     * @param behaviours what devices do
     */
    public FuseLosses(Loom loom, Behaviours behaviours) {
        loom.wires().values().forEach(wire -> join(wire.a().place(), wire.b().place(), null));
        loom.devices().values().forEach(device -> elements.addAll(behaviours.of(device)));
        for (Placed element : elements) {
            if (isConductor(element)) {
                join(element.fromNode(), element.toNode(), element);
            }
            if (element.element() == Element.COIL) {
                relays.add(element.device().id());
            }
        }
    }

    private static boolean isConductor(Placed element) {
        return switch (element.element()) {
            case CUT_OUT, LINK, FUSE, CONTACT, SENSE, MAKE, BREAK, ENGINE_OFF -> true;
            case SOURCE, GENERATOR, COIL, FIELD, LOAD, EARTH, NONE -> false;
        };
    }

    private void join(String one, String other, @Nullable Placed element) {
        edges.computeIfAbsent(one, node -> new ArrayList<>()).add(new Edge(other, element));
        edges.computeIfAbsent(other, node -> new ArrayList<>()).add(new Edge(one, element));
    }

    /** @return every fuse of the loom, in the order of devices and points */
    public List<FuseLoss> all() {
        return elements.stream()
                .filter(element -> element.element() == Element.FUSE)
                .map(fuse -> new FuseLoss(fuse.device().id(), fuse.from(), fuse.to(), dark(fuse)))
                .toList();
    }

    private SortedSet<String> dark(Placed fuse) {
        Set<String> before = live(null);
        Set<String> after = live(fuse);
        SortedSet<String> dark = new TreeSet<>();
        for (Placed element : elements) {
            boolean loses =
                    loses(element.fromNode(), before, after)
                            || loses(element.toNode(), before, after);
            if (element.element() == Element.LOAD && loses) {
                dark.add(element.device().id());
            }
        }
        return dark;
    }

    private static boolean loses(String node, Set<String> before, Set<String> after) {
        return before.contains(node) && !after.contains(node);
    }

    /** The nodes that a source reaches without that fuse, once every relay without a feed has let go. */
    private Set<String> live(@Nullable Placed without) {
        Set<String> resting = new HashSet<>();
        while (true) {
            Set<String> live = walk(without, resting);
            Set<String> fed = new HashSet<>();
            for (Placed element : elements) {
                if (element.element() == Element.COIL
                        && (live.contains(element.fromNode()) || live.contains(element.toNode()))) {
                    fed.add(element.device().id());
                }
            }
            Set<String> letGo = new HashSet<>(relays);
            letGo.removeAll(fed);
            if (!resting.addAll(letGo)) {
                return live;
            }
        }
    }

    private Set<String> walk(@Nullable Placed without, Set<String> resting) {
        Set<String> live = new HashSet<>();
        Deque<String> waiting = new ArrayDeque<>();
        for (Placed element : elements) {
            if (isSource(element) && live.add(element.fromNode())) {
                waiting.add(element.fromNode());
            }
        }
        while (!waiting.isEmpty()) {
            for (Edge edge : edges.getOrDefault(waiting.removeFirst(), List.of())) {
                boolean isWay =
                        !edge.to().equals(Behaviour.BODY)
                                && isWhole(edge.element(), without, resting);
                if (isWay && live.add(edge.to())) {
                    waiting.add(edge.to());
                }
            }
        }
        return live;
    }

    private static boolean isSource(Placed element) {
        return element.element() == Element.SOURCE || element.element() == Element.GENERATOR;
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
