package org.loomwright.testing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddOpening;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.ExtendBranch;
import org.loomwright.core.amendment.Amendment.MoveWireEnd;
import org.loomwright.core.amendment.Amendment.RemoveWire;
import org.loomwright.core.amendment.Amendment.ReplaceWire;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Circuits added to a loom from a seed: consumers, switches, fuses and relays with the points that they have on vehicles, half of them
 * wired to something, and a few changes of what was there. Every amendment can be applied.
 */
public final class RandomAdditions {

    private static final List<DeviceKind> KINDS =
            List.of(
                    DeviceKind.LAMP,
                    DeviceKind.GAUGE,
                    DeviceKind.MOTOR,
                    DeviceKind.RADIO,
                    DeviceKind.SOCKET,
                    DeviceKind.RELAY,
                    DeviceKind.SWITCH,
                    DeviceKind.FUSE,
                    DeviceKind.SENDER,
                    DeviceKind.FLASHER);
    private static final List<String> NAMES =
            List.of(
                    "reversing",
                    "rear fog",
                    "fog",
                    "hazard",
                    "oil pressure",
                    "temperature",
                    "voltmeter",
                    "fan",
                    "socket",
                    "radio",
                    "panel lamp",
                    "fog warning",
                    "LED",
                    "unnamed");

    private final Loom loom;
    private final Random random;
    private final List<Amendment> amendments = new ArrayList<>();
    private final List<String> places = new ArrayList<>();
    private final List<Wire> untouched;

    private RandomAdditions(Loom loom, long seed) {
        this.loom = loom;
        this.random = new Random(seed);
        this.untouched = new ArrayList<>(loom.wires().values());
        loom.devices().values().forEach(this::note);
    }

    private void note(Device device) {
        device.points().forEach(point -> places.add(device.id() + "/" + point.name()));
    }

    /** @return devices and wires only, all of them added */
    public static List<Amendment> circuits(Loom loom, long seed, int devices) {
        RandomAdditions additions = new RandomAdditions(loom, seed);
        for (int i = 1; i <= devices; i++) {
            additions.addDevice("X" + i);
            additions.addWire("XW" + i);
        }
        return List.copyOf(additions.amendments);
    }

    /** @return circuits, legs, openings, and changes of wires that were there */
    public static List<Amendment> of(Loom loom, long seed, int count) {
        RandomAdditions additions = new RandomAdditions(loom, seed);
        for (int i = 1; i <= count; i++) {
            additions.addDevice("X" + i);
            additions.addWire("XW" + i);
            additions.change("C" + i);
        }
        return List.copyOf(additions.amendments);
    }

    private void addDevice(String id) {
        DeviceKind kind = pick(KINDS);
        List<Point> points =
                names(kind).stream()
                        .map(name -> new Point(name, anyNode(), LoomSketch.mm(80)))
                        .toList();
        Device device = new Device(id, pick(NAMES) + " " + kind.words(), kind, null, points);
        amendments.add(new AddDevice("A-" + id, "", device));
        note(device);
    }

    private List<String> names(DeviceKind kind) {
        if (kind == DeviceKind.RELAY) {
            return List.of("30", "87", "86", "85");
        }
        if (kind == DeviceKind.SENDER) {
            return List.of("SENDER");
        }
        boolean isThrough = kind == DeviceKind.FUSE || kind == DeviceKind.SWITCH;
        String second = isThrough ? "OUT" : kind == DeviceKind.FLASHER ? "LAMPS" : "EARTH";
        String first = kind == DeviceKind.FUSE ? "IN" : "FEED";
        return isThrough || random.nextBoolean() ? List.of(first, second) : List.of(first);
    }

    private void addWire(String id) {
        String from = places.getLast();
        String to = anyPlaceBut(from);
        if (to != null) {
            amendments.add(new AddWire("A-" + id, "", LoomSketch.plainWire(id, "GN", from, to)));
        }
    }

    private @Nullable String anyPlaceBut(String place) {
        String other = pick(places);
        return other.equals(place) ? null : other;
    }

    private void change(String id) {
        switch (random.nextInt(6)) {
            case 0 -> amendments.add(leg(id));
            case 1 -> amendments.add(opening(id));
            case 2 -> amendments.add(new RemoveWire(id, "", anyUntouched().id()));
            case 3 ->
                    amendments.add(
                            new ReplaceWire(
                                    id,
                                    "",
                                    anyUntouched().id(),
                                    WireColour.parse("PW"),
                                    "14/.012"));
            case 4 -> moveEnd(id);
            default -> {
                // a round without a change
            }
        }
    }

    private Wire anyUntouched() {
        return untouched.remove(random.nextInt(untouched.size()));
    }

    private ExtendBranch leg(String id) {
        Segment segment = LoomSketch.plainSegment("S-" + id, anyNode(), "N-" + id, 200);
        return new ExtendBranch(id, "", segment, new Node("N-" + id, "end"));
    }

    private AddOpening opening(String id) {
        String segment = pick(List.copyOf(loom.segments().keySet()));
        return new AddOpening(id, "", segment, LoomSketch.grommet("O-" + id, 0));
    }

    private void moveEnd(String id) {
        Wire wire = anyUntouched();
        String place = pick(places);
        if (!wire.a().place().equals(place) && !wire.b().place().equals(place)) {
            amendments.add(
                    new MoveWireEnd(id, "", wire.id(), Side.A, LoomSketch.end(place, "ring-5")));
        }
    }

    private String anyNode() {
        return pick(List.copyOf(loom.nodes().keySet()));
    }

    private <T> T pick(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
