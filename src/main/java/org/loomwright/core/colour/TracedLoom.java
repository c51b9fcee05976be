package org.loomwright.core.colour;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A loom with what tracing found out about it and which wires leave it where. Built in time linear in the number of wires. Immutable and
 * thread-safe.
 */
public final class TracedLoom {

    private final Loom loom;
    private final Tracing tracing;
    private final Catalogue catalogue;
    private final Nets nets;
    private final Map<String, SortedSet<String>> wiresByNode = new TreeMap<>();

    private TracedLoom(Loom loom, Tracing tracing, Catalogue catalogue) {
        this.loom = loom;
        this.tracing = tracing;
        this.catalogue = loom.document().coloured(catalogue);
        this.nets = new Nets(loom);
        for (Wire wire : loom.wires().values()) {
            note(wire.a(), wire);
            note(wire.b(), wire);
        }
    }

    private void note(WireEnd end, Wire wire) {
        wiresByNode
                .computeIfAbsent(loom.getPoint(end).node(), node -> new TreeSet<>())
                .add(wire.id());
    }

    /**
     * @param loom a proven loom
     * @param tracing the tracing of that loom
     * @param catalogue the tables that it refers to
     * @return both together
     */
    public static TracedLoom of(Loom loom, Tracing tracing, Catalogue catalogue) {
        return new TracedLoom(loom, tracing, catalogue);
    }

    /** @return the loom */
    public Loom loom() {
        return loom;
    }

    /** @return its tracing */
    public Tracing tracing() {
        return tracing;
    }

    /** @return the tables that it refers to, with the loom's own colours */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** @return ids of the wires that end at a point there, by node, both in order */
    public Map<String, SortedSet<String>> wiresByNode() {
        return Collections.unmodifiableMap(wiresByNode);
    }

    /**
     * @param place {@code device/point}
     * @param other another
     * @return whether nothing but copper joins the two
     */
    public boolean isJoined(String place, String other) {
        return nets.of(place).equals(nets.of(other));
    }

    /** Wires that leave the loom at that end's node. */
    List<Wire> leavingWith(WireEnd end) {
        return wiresByNode
                .getOrDefault(loom.getPoint(end).node(), Collections.emptySortedSet())
                .stream()
                .map(loom::getWire)
                .toList();
    }

    /** Whether nothing but copper, or the body, joins the two. */
    boolean isSameNet(Wire one, Wire other) {
        return isReturn(one.id()) && isReturn(other.id())
                || nets.of(one.a().place()).equals(nets.of(other.a().place()));
    }

    boolean isOnNet(Wire wire, WireEnd end) {
        return nets.of(wire.a().place()).equals(nets.of(end.place()));
    }

    private boolean isReturn(String wire) {
        return tracing.get(wire).role() == Role.RETURN;
    }

    WireTrace trace(Wire wire) {
        return tracing.get(wire.id());
    }

    String serviceOf(String device) {
        return Tracing.serviceOf(loom.getDevice(device), catalogue).map(Service::code).orElse("");
    }
}
