package org.loomwright.core.loom;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * A loom as somebody wrote it down: complete on its own and possibly wrong. {@link LoomChecker} decides.
 *
 * @param name what the loom is called
 * @param vehicle the vehicle that it belongs to
 * @param datum id of the node from which everything is measured
 * @param nodes breakouts and ends
 * @param segments runs between nodes
 * @param devices things that wires connect to
 * @param wires the wires
 * @param checks end-to-end measurements
 */
public record LoomDocument(
        String name,
        VehicleSheet vehicle,
        String datum,
        List<Node> nodes,
        List<Segment> segments,
        List<Device> devices,
        List<Wire> wires,
        List<EndToEnd> checks) {

    public LoomDocument {
        nodes = List.copyOf(nodes);
        segments = List.copyOf(segments);
        devices = List.copyOf(devices);
        wires = List.copyOf(wires);
        checks = List.copyOf(checks);
    }

    /**
     * The same loom with everything in the order of its ids (openings by position, points by name), so that two documents
     * that say the same are equal. Repeat readings and lists of words keep their order, because it means something.
     *
     * @return the ordered document
     */
    public LoomDocument ordered() {
        return new LoomDocument(
                name,
                vehicle,
                datum,
                by(nodes, Node::id),
                by(segments.stream().map(LoomDocument::ordered).toList(), Segment::id),
                by(devices.stream().map(LoomDocument::ordered).toList(), Device::id),
                by(wires, Wire::id),
                by(checks, EndToEnd::id));
    }

    private static Segment ordered(Segment segment) {
        Comparator<Opening> order =
                Comparator.comparing(Opening::position).thenComparing(Opening::id);
        return segment.withOpenings(segment.openings().stream().sorted(order).toList());
    }

    private static Device ordered(Device device) {
        return new Device(
                device.id(),
                device.name(),
                device.kind(),
                device.load(),
                device.particulars().ordered(),
                by(device.points(), Point::name));
    }

    private static <T> List<T> by(List<T> parts, Function<T, String> key) {
        return parts.stream().sorted(Comparator.comparing(key)).toList();
    }
}
