package org.loomwright.core.colour;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.code.ColourWords;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Wires of one colour that leave the loom at one node and are not joined to each other, so that somebody may mix them up. Earths are joined
 * by the body and never clash.
 *
 * @param node id of the node
 * @param colour the colour that they share
 * @param wires their ids, in order, at least two
 */
public record ColourClash(String node, WireColour colour, List<String> wires) {

    public ColourClash {
        wires = List.copyOf(wires);
    }

    /** @return every clash of the loom, by node and colour */
    public static List<ColourClash> in(TracedLoom traced) {
        List<ColourClash> clashes = new ArrayList<>();
        traced.wiresByNode()
                .forEach(
                        (node, ids) -> {
                            Map<WireColour, List<Wire>> byColour = new TreeMap<>();
                            ids.stream()
                                    .map(traced.loom()::getWire)
                                    .forEach(
                                            wire ->
                                                    byColour.computeIfAbsent(
                                                                    wire.colour(),
                                                                    c -> new ArrayList<>())
                                                            .add(wire));
                            byColour.forEach(
                                    (colour, wires) -> addIfApart(traced, node, wires, clashes));
                        });
        return List.copyOf(clashes);
    }

    private static void addIfApart(
            TracedLoom traced, String node, List<Wire> wires, List<ColourClash> clashes) {
        Wire first = wires.getFirst();
        if (wires.stream().anyMatch(wire -> !traced.isSameNet(first, wire))) {
            clashes.add(
                    new ColourClash(node, first.colour(), wires.stream().map(Wire::id).toList()));
        }
    }

    /**
     * @param traced the loom in which it was found
     * @return the clash as a warning that says what to do
     */
    public Finding finding(TracedLoom traced) {
        Catalogue catalogue = traced.catalogue();
        return Finding.warning(
                "colour.clash",
                Subject.of(ThingKind.NODE, node),
                "Wires %s are all %s and leave the loom at %s (%s), but are not joined: tag each of them, or give one another tracer."
                        .formatted(
                                String.join(", ", wires),
                                ColourWords.withLetters(colour, catalogue),
                                node,
                                traced.loom().getNode(node).name()));
    }
}
