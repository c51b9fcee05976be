package org.loomwright.core.electrical.check.remedy;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Places that an added circuit can be fed from: what copper alone joins to the battery, then the main terminals of the control box.
 *
 * <p>Source: owners' pages feed large loads from the battery or solenoid stud or from the charging circuit's terminal. A feed at the
 * battery's side of an ammeter leaves it alone only while the battery gives; while the generator gives, one at the control box does.
 */
final class Feeds {

    /** As many are tried. */
    private static final int MOST = 4;

    private final Loom loom;
    private final Map<String, List<WireEnd>> neighbours = new HashMap<>();
    private final Map<String, WireEnd> ends = new HashMap<>();

    private Feeds(Loom loom) {
        this.loom = loom;
        for (Wire wire : loom.wires().values()) {
            join(wire.a(), wire.b());
            join(wire.b(), wire.a());
        }
    }

    private void join(WireEnd one, WireEnd other) {
        ends.putIfAbsent(one.place(), one);
        neighbours.computeIfAbsent(one.place(), place -> new ArrayList<>()).add(other);
    }

    /** Ends of wires at such places, the best place first; each says which terminal is usual there. */
    static List<WireEnd> of(Loom loom) {
        Feeds feeds = new Feeds(loom);
        List<WireEnd> places = new ArrayList<>();
        loom.devices().values().stream()
                .filter(device -> device.kind() == DeviceKind.BATTERY)
                .forEach(battery -> places.addAll(feeds.joinedTo(battery)));
        loom.devices().values().stream()
                .filter(device -> device.kind() == DeviceKind.CONTROL_BOX)
                .flatMap(box -> feeds.mainTerminals(box).stream())
                .forEach(places::add);
        return places.stream().limit(MOST).toList();
    }

    /** Studs before the battery itself, near before far. */
    private List<WireEnd> joinedTo(Device battery) {
        Map<String, Integer> steps = new HashMap<>(Map.of(battery.id() + "/LIVE", 0));
        Deque<String> waiting = new ArrayDeque<>(steps.keySet());
        while (!waiting.isEmpty()) {
            String place = waiting.removeFirst();
            for (WireEnd next : neighbours.getOrDefault(place, List.of())) {
                if (steps.putIfAbsent(next.place(), steps.getOrDefault(place, 0) + 1) == null) {
                    waiting.add(next.place());
                }
            }
        }
        return steps.keySet().stream()
                .map(ends::get)
                .filter(end -> end != null && isStud(end))
                .sorted(
                        Comparator.comparing((WireEnd end) -> end.device().equals(battery.id()))
                                .thenComparing(end -> steps.getOrDefault(end.place(), 0))
                                .thenComparing(WireEnd::place))
                .limit(2)
                .toList();
    }

    private boolean isStud(WireEnd end) {
        DeviceKind kind = loom.getDevice(end.device()).kind();
        return kind == DeviceKind.BATTERY
                || kind == DeviceKind.RELAY
                || kind == DeviceKind.STARTER
                || kind == DeviceKind.JOINT;
    }

    private List<WireEnd> mainTerminals(Device box) {
        return List.of("A1", "A").stream()
                .map(point -> ends.get(box.id() + "/" + point))
                .filter(end -> end != null)
                .toList();
    }
}
