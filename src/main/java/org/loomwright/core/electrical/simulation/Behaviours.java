package org.loomwright.core.electrical.simulation;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Point;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The table of what devices do. Immutable and thread-safe. */
public final class Behaviours {

    private final Map<DeviceKind, List<Behaviour>> rows = new EnumMap<>(DeviceKind.class);

    /**
     * @param rows the table; the order of rows of one kind does not matter
     */
    public Behaviours(List<Behaviour> rows) {
        rows.forEach(
                row -> this.rows.computeIfAbsent(row.kind(), kind -> new ArrayList<>()).add(row));
    }

    /**
     * @param device any device
     * @return every element that stands between points of the device
     */
    public List<Placed> of(Device device) {
        List<Placed> placed = new ArrayList<>();
        for (Behaviour row : rowsOf(device)) {
            if (!row.isFallback() && row.element() != Element.NONE) {
                place(device, row, placed);
            }
        }
        if (unknownPoints(device).size() == device.points().size()) {
            rowsOf(device).stream()
                    .filter(Behaviour::isFallback)
                    .forEach(row -> placeFallback(device, row, placed));
        }
        return placed;
    }

    private List<Behaviour> rowsOf(Device device) {
        return rows.getOrDefault(device.kind(), List.of());
    }

    private static void place(Device device, Behaviour row, List<Placed> placed) {
        for (Point from : device.points()) {
            if (row.from().equals(Behaviour.EVERY) || row.from().equals(from.name())) {
                if (row.to().equals(List.of(Behaviour.EVERY))) {
                    device.points().stream()
                            .filter(to -> !to.equals(from))
                            .forEach(to -> add(device, from, to.name(), row, placed));
                } else {
                    firstThere(device, row.to())
                            .ifPresent(to -> add(device, from, to, row, placed));
                }
            }
        }
    }

    private static void add(
            Device device, Point from, String to, Behaviour row, List<Placed> placed) {
        placed.add(new Placed(device, from.name(), to, row.element()));
    }

    private static Optional<String> firstThere(Device device, List<String> names) {
        Set<String> points = names(device);
        return names.stream()
                .filter(name -> name.equals(Behaviour.BODY) || points.contains(name))
                .findFirst();
    }

    private static void placeFallback(Device device, Behaviour row, List<Placed> placed) {
        List<Point> points = device.points();
        if (points.size() == 2) {
            add(device, points.get(0), points.get(1).name(), row, placed);
        } else if (points.size() == 1 && row.to().contains(Behaviour.BODY)) {
            add(device, points.get(0), Behaviour.BODY, row, placed);
        }
    }

    /**
     * @param device any device
     * @return its points that no row of its kind mentions, in the order of the device
     */
    public Set<String> unknownPoints(Device device) {
        Set<String> unknown = names(device);
        for (Behaviour row : rowsOf(device)) {
            boolean everyTo = row.to().contains(Behaviour.EVERY) && unknown.contains(row.from());
            if (row.from().equals(Behaviour.EVERY) || everyTo) {
                return Set.of();
            }
        }
        for (Behaviour row : rowsOf(device)) {
            unknown.remove(row.from());
            row.to().forEach(unknown::remove);
        }
        return unknown;
    }

    /**
     * @param device any device
     * @return whether something is known about what it does, or need not be: what only joins wires does nothing between its points
     */
    public boolean knows(Device device) {
        boolean joinsOnly =
                device.kind() == DeviceKind.JOINT || device.kind() == DeviceKind.CONNECTOR;
        Set<String> unknown = unknownPoints(device);
        boolean byFallback = unknown.size() == device.points().size() && !of(device).isEmpty();
        return joinsOnly || unknown.isEmpty() || byFallback;
    }

    private static Set<String> names(Device device) {
        Set<String> names = new LinkedHashSet<>();
        device.points().forEach(point -> names.add(point.name()));
        return names;
    }
}
