package org.loomwright.core.loom;

import org.loomwright.core.catalogue.Catalogue;

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
 * @param customColours colours that the loom has and the code does not have
 */
public record LoomDocument(
        String name,
        VehicleSheet vehicle,
        String datum,
        List<Node> nodes,
        List<Segment> segments,
        List<Device> devices,
        List<Wire> wires,
        List<EndToEnd> checks,
        List<CustomColour> customColours) {

    public LoomDocument {
        nodes = List.copyOf(nodes);
        segments = List.copyOf(segments);
        devices = List.copyOf(devices);
        wires = List.copyOf(wires);
        checks = List.copyOf(checks);
        customColours = List.copyOf(customColours);
    }

    /** A loom that has no colours but those of the code. */
    public LoomDocument(
            String name,
            VehicleSheet vehicle,
            String datum,
            List<Node> nodes,
            List<Segment> segments,
            List<Device> devices,
            List<Wire> wires,
            List<EndToEnd> checks) {
        this(name, vehicle, datum, nodes, segments, devices, wires, checks, List.of());
    }

    /**
     * @param own the colours that the loom has and the code does not have
     * @return the same loom with these in the place of those that it had
     */
    public LoomDocument withCustomColours(List<CustomColour> own) {
        return new LoomDocument(name, vehicle, datum, nodes, segments, devices, wires, checks, own);
    }

    /**
     * @param printed the tables of the trade
     * @return the same tables with this loom's own colours beside those of the code
     * @throws IllegalArgumentException if the colours cannot stand beside them, which the checker tells
     */
    public Catalogue coloured(Catalogue printed) {
        return customColours.isEmpty()
                ? printed
                : printed.withOwnColours(customColours.stream().map(CustomColour::basic).toList());
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
                by(checks, EndToEnd::id),
                by(customColours, CustomColour::letters));
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
