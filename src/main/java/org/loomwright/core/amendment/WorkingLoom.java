package org.loomwright.core.amendment;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Whole.Cut;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The mutable copy that amendments work on, made once per list. Keeps who stands on what, so that every amendment costs about
 * the same however large the loom is. Not thread-safe; never leaves this package.
 */
final class WorkingLoom {

    private final LoomDocument stock;
    private final Tracked<VehicleSheet> vehicle;
    private final Map<String, Tracked<Node>> nodes = new LinkedHashMap<>();
    private final Map<String, Whole> wholes = new LinkedHashMap<>();
    private final Map<String, Whole> farPieces = new HashMap<>();
    private final Map<String, Whole> brokenOutOf = new HashMap<>();
    private final Map<String, Cut> breakouts = new HashMap<>();
    private final Map<String, Whole> wholeOfOpening = new HashMap<>();
    private final Map<String, Tracked<Device>> devices = new LinkedHashMap<>();
    private final Map<String, Tracked<Wire>> wires = new LinkedHashMap<>();
    private final Map<String, Set<String>> wiresOnDevice = new HashMap<>();
    private final Map<String, Set<String>> segmentsFromNode = new HashMap<>();
    private final Map<String, Set<String>> pointsAtNode = new HashMap<>();

    WorkingLoom(Loom loom) {
        stock = loom.document();
        vehicle = Tracked.stock(stock.vehicle());
        stock.nodes().forEach(node -> nodes.put(node.id(), Tracked.stock(node)));
        stock.segments().forEach(segment -> addWhole(new Whole(segment, null)));
        stock.devices().forEach(device -> addDevice(Tracked.stock(device)));
        stock.wires().forEach(wire -> addWire(Tracked.stock(wire)));
    }

    LoomDocument stock() {
        return stock;
    }

    Tracked<VehicleSheet> vehicle() {
        return vehicle;
    }

    boolean has(Subject thing) {
        String id = thing.id();
        return switch (thing.kind()) {
            case NODE -> nodes.containsKey(id);
            case SEGMENT -> wholes.containsKey(id) || farPieces.containsKey(id);
            case OPENING -> wholeOfOpening.containsKey(id);
            case DEVICE -> devices.containsKey(id);
            case WIRE -> wires.containsKey(id);
            case LOOM,
                    VEHICLE,
                    POINT,
                    CHECK,
                    AMENDMENT,
                    REQUEST,
                    SPECIFICATION,
                    SETTINGS,
                    WORK_ORDER ->
                    throw new IllegalArgumentException("amendments make no " + thing.words());
        };
    }

    Map<String, Tracked<Node>> nodes() {
        return nodes;
    }

    Collection<Whole> wholes() {
        return wholes.values();
    }

    Map<String, Tracked<Device>> devices() {
        return devices;
    }

    Map<String, Tracked<Wire>> wires() {
        return wires;
    }

    Optional<Tracked<Wire>> wire(String id) {
        return Optional.ofNullable(wires.get(id));
    }

    Optional<Tracked<Device>> device(String id) {
        return Optional.ofNullable(devices.get(id));
    }

    Optional<Whole> whole(String segment) {
        return Optional.ofNullable(wholes.get(segment));
    }

    /** The whole of which that segment is a piece beyond a breakout. */
    Optional<Whole> wholeOfFarPiece(String segment) {
        return Optional.ofNullable(farPieces.get(segment));
    }

    Optional<Tracked<Opening>> opening(String id) {
        return Optional.ofNullable(wholeOfOpening.get(id))
                .flatMap(whole -> Optional.ofNullable(whole.openings().get(id)));
    }

    /** Ids of the wires on a device, in order. */
    Set<String> wiresOn(String device) {
        return Collections.unmodifiableSet(wiresOnDevice.getOrDefault(device, Set.of()));
    }

    /** Ids of the whole segments that run on from a node, in order. */
    Set<String> segmentsFrom(String node) {
        return Collections.unmodifiableSet(segmentsFromNode.getOrDefault(node, Set.of()));
    }

    /** The points whose wires leave the loom at a node, in order. */
    Set<String> pointsAt(String node) {
        return Collections.unmodifiableSet(pointsAtNode.getOrDefault(node, Set.of()));
    }

    void addNode(Node node, String by) {
        nodes.put(node.id(), Tracked.made(node, by));
    }

    void removeNode(String node) {
        nodes.remove(node);
    }

    void addWhole(Whole whole) {
        wholes.put(whole.recorded().id(), whole);
        whole.openings().keySet().forEach(opening -> wholeOfOpening.put(opening, whole));
        relate(segmentsFromNode, whole.recorded().from(), whole.recorded().id());
    }

    void removeWhole(Whole whole) {
        wholes.remove(whole.recorded().id());
        whole.openings().keySet().forEach(wholeOfOpening::remove);
        unrelate(segmentsFromNode, whole.recorded().from(), whole.recorded().id());
    }

    void cut(Whole whole, Cut cut, Node breakout) {
        whole.cut(cut);
        addNode(breakout, cut.madeBy());
        farPieces.put(cut.farSegment(), whole);
        breakouts.put(cut.node(), cut);
        brokenOutOf.put(cut.node(), whole);
    }

    /** Closes the breakout at a node, if an amendment made it and nothing needs it any more. */
    @Nullable Cut healIfFree(String node) {
        Cut cut = breakouts.get(node);
        Whole whole = brokenOutOf.get(node);
        if (cut == null
                || whole == null
                || !segmentsFrom(node).isEmpty()
                || !pointsAt(node).isEmpty()) {
            return null;
        }
        whole.heal(cut);
        removeNode(node);
        farPieces.remove(cut.farSegment());
        breakouts.remove(node);
        brokenOutOf.remove(node);
        return cut;
    }

    void addOpening(Whole whole, Opening opening, String by) {
        whole.openings().put(opening.id(), Tracked.made(opening, by));
        wholeOfOpening.put(opening.id(), whole);
    }

    void removeOpening(String opening) {
        Whole whole = wholeOfOpening.remove(opening);
        if (whole != null) {
            whole.openings().remove(opening);
        }
    }

    void addDevice(Tracked<Device> device) {
        devices.put(device.now().id(), device);
        for (Point point : device.now().points()) {
            relate(pointsAtNode, point.node(), device.now().id() + "/" + point.name());
        }
    }

    void removeDevice(Device device) {
        devices.remove(device.id());
        for (Point point : device.points()) {
            unrelate(pointsAtNode, point.node(), device.id() + "/" + point.name());
        }
    }

    void addWire(Tracked<Wire> wire) {
        wires.put(wire.now().id(), wire);
        for (Side side : Side.values()) {
            relate(wiresOnDevice, wire.now().end(side).device(), wire.now().id());
        }
    }

    void removeWire(Wire wire) {
        wires.remove(wire.id());
        for (Side side : Side.values()) {
            unrelate(wiresOnDevice, wire.end(side).device(), wire.id());
        }
    }

    void changeWire(Tracked<Wire> wire, Wire to, String by) {
        removeWire(wire.now());
        wire.change(to, by);
        addWire(wire);
    }

    private static void relate(Map<String, Set<String>> relation, String from, String to) {
        relation.computeIfAbsent(from, key -> new TreeSet<>()).add(to);
    }

    private static void unrelate(Map<String, Set<String>> relation, String from, String to) {
        relation.getOrDefault(from, new TreeSet<>()).remove(to);
    }
}
