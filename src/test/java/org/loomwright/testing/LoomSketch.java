package org.loomwright.testing;

import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.Evidence;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Hand;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Opening.PassDirection;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Draws a loom in a few lines: {@code new LoomSketch("N1").segment("S1", "N1", "N2", 600).device("D1", DeviceKind.LAMP,
 * "N2")}. Nodes come into being with the segments that mention them. A place on a device is written {@code D1/1}.
 */
public final class LoomSketch {

    /** A woven black cover that somebody measured. */
    public static final Finish BLACK_BRAID =
            new Finish(
                    "cotton-braid", "B", List.of(), 12, 2, new Evidence(EvidenceKind.MEASURED, ""));

    private static final Length TAIL = Length.ofMillimetres(80);

    private final String datum;
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final Map<String, Segment> segments = new LinkedHashMap<>();
    private final List<Device> devices = new ArrayList<>();
    private final List<Wire> wires = new ArrayList<>();
    private final List<EndToEnd> checks = new ArrayList<>();
    private EarthPolarity earth = EarthPolarity.POSITIVE;
    private Voltage system = Voltage.ofMillivolts(12_000);

    /**
     * @param datum id of the node from which everything is measured
     */
    public LoomSketch(String datum) {
        this.datum = datum;
        node(datum);
    }

    /** @return that many millimetres */
    public static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    /** @return a straight segment in black braid, without openings */
    public static Segment plainSegment(String id, String from, String to, long lengthMm) {
        return new Segment(id, from, to, mm(lengthMm), List.of(), null, 0, BLACK_BRAID, List.of());
    }

    /** @return a 20 mm grommet that ends beyond it pass */
    public static Opening grommet(String id, long positionMm) {
        return new Opening(
                id,
                "grommet " + id,
                OpeningKind.GROMMET,
                mm(positionMm),
                mm(20),
                PassDirection.AWAY_FROM_DATUM);
    }

    /** @return a device whose points 1, 2, ... are at these nodes */
    public static Device plainDevice(String id, DeviceKind kind, String... atNodes) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < atNodes.length; i++) {
            points.add(new Point(Integer.toString(i + 1), atNodes[i], TAIL));
        }
        return new Device(id, kind.words() + " " + id, kind, null, points);
    }

    /** @return an end on a place such as {@code D1/1}, with a bullet */
    public static WireEnd end(String place) {
        return end(place, "bullet-4.7");
    }

    /** @return an end on a place such as {@code D1/1} */
    public static WireEnd end(String place, String terminal) {
        int slash = place.indexOf('/');
        return new WireEnd(place.substring(0, slash), place.substring(slash + 1), terminal);
    }

    /** @return a good 14/0.30 wire with bullets between two places */
    public static Wire plainWire(String id, String colour, String a, String b) {
        return new Wire(
                id,
                "circuit of " + id,
                WireColour.parse(colour),
                "14/0.30",
                end(a),
                end(b),
                Condition.GOOD);
    }

    /** Adds a node by itself; needed only for wrong looms. */
    public LoomSketch node(String id) {
        nodes.putIfAbsent(id, new Node(id, "node " + id));
        return this;
    }

    /** Names a node, whether or not a segment mentioned it. */
    public LoomSketch node(Node node) {
        nodes.put(node.id(), node);
        return this;
    }

    /** Adds a plain segment with the nodes that it mentions. */
    public LoomSketch segment(String id, String from, String to, long lengthMm) {
        return segment(plainSegment(id, from, to, lengthMm));
    }

    /** Adds any segment with the nodes that it mentions. */
    public LoomSketch segment(Segment segment) {
        segments.put(segment.id(), segment);
        return node(segment.from()).node(segment.to());
    }

    /** Changes a segment that is there. */
    public LoomSketch with(String segment, UnaryOperator<Segment> change) {
        segments.computeIfPresent(segment, (id, old) -> change.apply(old));
        return this;
    }

    /** Records repeat readings of a segment's length. */
    public LoomSketch readings(String segment, long... readingsMm) {
        List<Length> readings = Arrays.stream(readingsMm).mapToObj(LoomSketch::mm).toList();
        return with(
                segment,
                old ->
                        new Segment(
                                old.id(),
                                old.from(),
                                old.to(),
                                old.length(),
                                readings,
                                old.leaves(),
                                old.bendDegrees(),
                                old.finish(),
                                old.openings()));
    }

    /** Records how far a segment bends in all. */
    public LoomSketch bends(String segment, int degrees) {
        return with(
                segment,
                old ->
                        new Segment(
                                old.id(),
                                old.from(),
                                old.to(),
                                old.length(),
                                old.readings(),
                                old.leaves(),
                                degrees,
                                old.finish(),
                                old.openings()));
    }

    /** Adds a grommet to a segment that is there. */
    public LoomSketch opening(String segment, String id, long positionMm) {
        return opening(segment, grommet(id, positionMm));
    }

    /** Adds any opening to a segment that is there. */
    public LoomSketch opening(String segment, Opening opening) {
        return with(
                segment,
                old -> {
                    List<Opening> openings = new ArrayList<>(old.openings());
                    openings.add(opening);
                    return old.withOpenings(openings);
                });
    }

    /** Adds a device whose points 1, 2, ... are at these nodes. */
    public LoomSketch device(String id, DeviceKind kind, String... atNodes) {
        return device(plainDevice(id, kind, atNodes));
    }

    /** Adds any device. */
    public LoomSketch device(Device device) {
        devices.add(device);
        return this;
    }

    /** Adds a plain wire between two places such as {@code D1/1}. */
    public LoomSketch wire(String id, String colour, String a, String b) {
        return wire(plainWire(id, colour, a, b));
    }

    /** Adds any wire. */
    public LoomSketch wire(Wire wire) {
        wires.add(wire);
        return this;
    }

    /** Says what the vehicle's supply is; 12 V with positive earth where nobody said. */
    public LoomSketch supply(EarthPolarity earth, long systemVolts) {
        this.earth = earth;
        this.system = Voltage.ofMillivolts(systemVolts * 1_000);
        return this;
    }

    /** Adds an end-to-end measurement. */
    public LoomSketch check(String id, String from, String to, long measuredMm) {
        checks.add(new EndToEnd(id, from, to, mm(measuredMm)));
        return this;
    }

    /** @return what was drawn, right or wrong */
    public LoomDocument document() {
        VehicleSheet vehicle =
                new VehicleSheet("Averley Twelve", 1954, Hand.RIGHT, earth, system, List.of());
        return new LoomDocument(
                "sketch",
                vehicle,
                datum,
                List.copyOf(nodes.values()),
                List.copyOf(segments.values()),
                devices,
                wires,
                checks);
    }

    /**
     * @return what was drawn, proven
     * @throws IllegalStateException if it is not a loom, with all the reasons
     */
    public Loom loom() {
        return LoomChecker.check(document(), TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }
}
