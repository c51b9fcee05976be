package org.loomwright.core.finder;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Where on the vehicle somebody means, and how far from there wires run. */
final class Places {

    private static final Set<String> FILLERS =
            Set.of("a", "an", "the", "at", "near", "by", "in", "on", "of", "behind", "under", "to");

    /** A wire that passes 500 mm from the place fits half as well as one that touches it: own choice. */
    private static final long HALF_MM = 500;

    private static final int ENDS = 1_000;
    private static final int PASSES = 800;
    private static final int NEAR = 700;

    private final Loom loom;
    private final Routes routes;

    Places(Loom loom) {
        this.loom = loom;
        this.routes = new Routes(loom);
    }

    /** The nodes that are meant: by id, or those in whose names, or whose devices' names, most of the words stand. */
    Set<String> meant(String text) {
        for (String node : loom.nodes().keySet()) {
            if (node.equalsIgnoreCase(text.strip())) {
                return Set.of(node);
            }
        }
        for (Device device : loom.devices().values()) {
            if (device.id().equalsIgnoreCase(text.strip())) {
                return nodes(device);
            }
        }
        return byWords(words(text));
    }

    private static Set<String> nodes(Device device) {
        Set<String> nodes = new TreeSet<>();
        device.points().forEach(point -> nodes.add(point.node()));
        return nodes;
    }

    private Set<String> byWords(Set<String> wanted) {
        Set<String> best = new TreeSet<>();
        int most = 1;
        for (Node node : loom.nodes().values()) {
            most = keep(wanted, words(node.name()), Set.of(node.id()), most, best);
        }
        for (Device device : loom.devices().values()) {
            most = keep(wanted, words(device.name()), nodes(device), most, best);
        }
        return best;
    }

    private static int keep(
            Set<String> wanted, Set<String> there, Set<String> nodes, int most, Set<String> best) {
        int count = (int) wanted.stream().filter(there::contains).count();
        if (count > most) {
            best.clear();
        }
        if (count >= most) {
            best.addAll(nodes);
        }
        return Math.max(count, most);
    }

    private static Set<String> words(String text) {
        Set<String> words =
                new TreeSet<>(
                        Arrays.asList(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")));
        words.removeAll(FILLERS);
        words.remove("");
        return words;
    }

    /** How well a wire fits the places that are meant. */
    Fit fit(Wire wire, Set<String> meant) {
        Point a = loom.getPoint(wire.a());
        Point b = loom.getPoint(wire.b());
        if (meant.contains(a.node()) || meant.contains(b.node())) {
            return Fit.of(ENDS, "it leaves the loom there");
        }
        List<String> route = route(wire);
        if (route.stream().anyMatch(meant::contains)) {
            return Fit.of(PASSES, "it runs through there");
        }
        Length nearest =
                meant.stream()
                        .flatMap(node -> route.stream().map(on -> routes.distance(node, on)))
                        .min(Comparator.naturalOrder())
                        .orElse(Length.ZERO);
        long apartMm = nearest.micrometres() / 1_000;
        return Fit.of(
                (int) (NEAR * HALF_MM / (HALF_MM + apartMm)),
                "it runs %d mm from there".formatted(apartMm));
    }

    /** The nodes that a wire comes by, from its end A to its end B. */
    List<String> route(Wire wire) {
        String at = loom.getPoint(wire.a()).node();
        List<String> nodes = new ArrayList<>(List.of(at));
        for (Segment segment : routes.of(wire)) {
            at = segment.from().equals(at) ? segment.to() : segment.from();
            nodes.add(at);
        }
        return nodes;
    }
}
