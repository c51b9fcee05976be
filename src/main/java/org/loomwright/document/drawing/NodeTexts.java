package org.loomwright.document.drawing;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is written at the nodes of a loom. */
final class NodeTexts {

    private final Loom loom;
    private final Map<String, Length> distance = new HashMap<>();
    private final Map<String, Map<Device, List<Point>>> atNode = new HashMap<>();

    NodeTexts(Loom loom) {
        this.loom = loom;
        distance.put(loom.datum(), Length.ZERO);
        for (Segment segment : loom.walk()) {
            Length near = distance.getOrDefault(segment.from(), Length.ZERO);
            distance.put(segment.to(), near.plus(segment.length()));
        }
        for (Device device : loom.devices().values()) {
            for (Point point : device.points()) {
                atNode.computeIfAbsent(point.node(), id -> new LinkedHashMap<>())
                        .computeIfAbsent(device, id -> new ArrayList<>())
                        .add(point);
            }
        }
    }

    String name(String node) {
        return java.util.Objects.requireNonNull(loom.nodes().get(node)).name();
    }

    String distance(String node) {
        return node.equals(loom.datum())
                ? "datum: everything is measured from here"
                : distance.getOrDefault(node, Length.ZERO) + " from datum";
    }

    /** One line for each device with tails at the node. */
    List<String> devices(String node) {
        List<String> lines = new ArrayList<>();
        atNode.getOrDefault(node, Map.of())
                .forEach((device, points) -> lines.add(device.name() + ", " + tails(points)));
        return lines;
    }

    private static String tails(List<Point> points) {
        Length shortest = points.stream().map(Point::tail).min(Length::compareTo).orElseThrow();
        Length longest = points.stream().map(Point::tail).max(Length::compareTo).orElseThrow();
        String number = shortest.toMillimetres().toPlainString();
        return shortest.equals(longest)
                ? "tail " + number
                : "tails " + number + " to " + longest.toMillimetres().toPlainString();
    }
}
