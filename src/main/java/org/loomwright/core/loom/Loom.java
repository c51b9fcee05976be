package org.loomwright.core.loom;

import org.loomwright.core.finding.ThingKind;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A loom that is known to be right: a tree rooted at its datum, every wire end on an existing point, every reference
 * resolved. Only {@link LoomChecker} makes one. Immutable and thread-safe; equal when the ordered documents are equal.
 *
 * <p>Look-ups by id cost O(1). {@link #walk} lists the segments so that each comes after the one that leads to it, brothers
 * in the order of their ids.
 */
public final class Loom {

    private final LoomDocument document;
    private final Map<String, Node> nodes;
    private final Map<String, Segment> segments;
    private final Map<String, Device> devices;
    private final Map<String, Wire> wires;
    private final Map<String, Point> points = new LinkedHashMap<>();
    private final Map<String, Segment> arriving = new LinkedHashMap<>();
    private final Map<String, List<Segment>> leaving = new LinkedHashMap<>();
    private final List<Segment> walk;

    /**
     * @param proven a document in which the checker found no fault
     */
    Loom(LoomDocument proven) {
        document = proven.ordered();
        nodes = byId(document.nodes(), Node::id);
        segments = byId(document.segments(), Segment::id);
        devices = byId(document.devices(), Device::id);
        wires = byId(document.wires(), Wire::id);
        for (Device device : document.devices()) {
            device.points().forEach(point -> points.put(device.id() + "/" + point.name(), point));
        }
        for (Segment segment : document.segments()) {
            arriving.put(segment.to(), segment);
            leaving.computeIfAbsent(segment.from(), id -> new ArrayList<>()).add(segment);
        }
        walk = walkFrom(document.datum());
    }

    private static <T> Map<String, T> byId(List<T> parts, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        parts.forEach(part -> map.put(id.apply(part), part));
        return Collections.unmodifiableMap(map);
    }

    private List<Segment> walkFrom(String datum) {
        List<Segment> order = new ArrayList<>();
        List<Segment> waiting = new ArrayList<>(leaving(datum).reversed());
        while (!waiting.isEmpty()) {
            Segment next = waiting.removeLast();
            order.add(next);
            waiting.addAll(leaving(next.to()).reversed());
        }
        return List.copyOf(order);
    }

    /** @return the ordered document */
    public LoomDocument document() {
        return document;
    }

    /** @return what the loom is called */
    public String name() {
        return document.name();
    }

    /** @return id of the node from which everything is measured */
    public String datum() {
        return document.datum();
    }

    /** @return nodes by id, in the order of their ids */
    public Map<String, Node> nodes() {
        return nodes;
    }

    /** @return segments by id, in the order of their ids */
    public Map<String, Segment> segments() {
        return segments;
    }

    /** @return devices by id, in the order of their ids */
    public Map<String, Device> devices() {
        return devices;
    }

    /** @return wires by id, in the order of their ids */
    public Map<String, Wire> wires() {
        return wires;
    }

    /** @return every segment, each after the one that leads to it from the datum */
    public List<Segment> walk() {
        return walk;
    }

    /** @return the segment that leads to the node, empty for the datum */
    public Optional<Segment> findArriving(String node) {
        return Optional.ofNullable(arriving.get(node));
    }

    /** @return the segments that leave the node away from the datum, in the order of their ids */
    public List<Segment> leaving(String node) {
        return Collections.unmodifiableList(leaving.getOrDefault(node, List.of()));
    }

    /** @return how many segments meet at the node: one at an end, more at a breakout */
    public int degree(String node) {
        return leaving(node).size() + (arriving.containsKey(node) ? 1 : 0);
    }

    /**
     * @param id of one of this loom's segments
     * @return the segment
     * @throws IllegalArgumentException if this loom has no such segment
     */
    public Segment getSegment(String id) {
        return get(segments, ThingKind.SEGMENT, id);
    }

    /**
     * @param id of one of this loom's devices
     * @return the device
     * @throws IllegalArgumentException if this loom has no such device
     */
    public Device getDevice(String id) {
        return get(devices, ThingKind.DEVICE, id);
    }

    /**
     * @param id of one of this loom's wires
     * @return the wire
     * @throws IllegalArgumentException if this loom has no such wire
     */
    public Wire getWire(String id) {
        return get(wires, ThingKind.WIRE, id);
    }

    /**
     * @param id of one of this loom's nodes
     * @return the node
     * @throws IllegalArgumentException if this loom has no such node
     */
    public Node getNode(String id) {
        return get(nodes, ThingKind.NODE, id);
    }

    private <T> T get(Map<String, T> parts, ThingKind kind, String id) {
        T part = parts.get(id);
        if (part == null) {
            throw new IllegalArgumentException(
                    "loom " + name() + " has no " + kind.words() + " " + id);
        }
        return part;
    }

    /**
     * @param end an end of one of this loom's wires, or any device and point of this loom
     * @return the point
     * @throws IllegalArgumentException if this loom has no such point
     */
    public Point getPoint(WireEnd end) {
        return get(points, ThingKind.POINT, end.place());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Loom that && document.equals(that.document);
    }

    @Override
    public int hashCode() {
        return document.hashCode();
    }

    @Override
    public String toString() {
        return "loom " + name() + " (" + segments.size() + " segments, " + wires.size() + " wires)";
    }
}
