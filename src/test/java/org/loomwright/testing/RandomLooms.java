package org.loomwright.testing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Departure;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Fitting;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomChecker;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Opening.PassDirection;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Looms from a seed: a random tree whose newer branches tend to hang on newer nodes, with devices, wires, openings, readings
 * and end-to-end checks. The same seed and size give the same loom for ever.
 */
public final class RandomLooms {

    private static final List<String> COLOURS = List.of("N", "W", "G", "U", "UR", "GN", "LGN", "B");
    private static final List<String> SIZES = List.of("14/0.30", "28/0.30", "44/0.30", "9/0.30");
    private static final List<String> TERMINALS = List.of("bullet-4.7", "ring-5", "screw-end");

    private static final List<String> SERVICES = List.of("horns", "radio", "side-lamps");

    private final Random random;

    /** For what need not be said of a device; a source of its own, so that the rest does not depend on it. */
    private final Random facts;

    private final Size size;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();
    private final List<Device> devices = new ArrayList<>();
    private final List<Wire> wires = new ArrayList<>();
    private final List<EndToEnd> checks = new ArrayList<>();

    /**
     * How large a loom is to be.
     *
     * @param segments number of segments, at least 1; there is one node more
     * @param devices number of devices, at least 2, each with one to three points
     * @param wires number of wires
     * @param openings number of openings
     */
    public record Size(int segments, int devices, int wires, int openings) {

        /** A handful of everything. */
        public static final Size SMALL = new Size(8, 6, 12, 6);

        /** A whole car. */
        public static final Size CAR = new Size(60, 50, 150, 40);
    }

    private RandomLooms(long seed, Size size) {
        this.random = new Random(seed);
        this.facts = new Random(~seed);
        this.size = size;
    }

    /**
     * @param seed any number
     * @param size how large
     * @return the loom
     */
    public static Loom of(long seed, Size size) {
        return LoomChecker.check(documentOf(seed, size), TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    /**
     * @param seed any number
     * @param size how large
     * @return the document of the loom
     */
    public static LoomDocument documentOf(long seed, Size size) {
        return new RandomLooms(seed, size).document();
    }

    private LoomDocument document() {
        addTree();
        addOpenings();
        for (int i = 1; i <= size.devices(); i++) {
            devices.add(device("D" + i));
        }
        for (int i = 1; i <= size.wires(); i++) {
            wires.add(wire("W" + i));
        }
        checks.add(new EndToEnd("C1", "N0", pick(nodes.subList(1, nodes.size())).id(), length(9)));
        LoomDocument frame = new LoomSketch("N0").document();
        return new LoomDocument(
                "random", frame.vehicle(), "N0", nodes, segments, devices, wires, checks);
    }

    private void addTree() {
        nodes.add(new Node("N0", "datum"));
        for (int i = 1; i <= size.segments(); i++) {
            int from = Math.max(random.nextInt(i), random.nextInt(i));
            nodes.add(new Node("N" + i, "node " + i));
            segments.add(segment("S" + i, "N" + from, "N" + i));
        }
    }

    private Segment segment(String id, String from, String to) {
        Length length = length(50 + random.nextInt(1950));
        List<Length> readings = random.nextInt(3) == 0 ? List.of(length, length(60)) : List.of();
        Departure leaves =
                random.nextBoolean()
                        ? new Departure(1 + random.nextInt(12), random.nextInt(181))
                        : null;
        return new Segment(
                id,
                from,
                to,
                length,
                readings,
                leaves,
                random.nextInt(200),
                LoomSketch.BLACK_BRAID,
                List.of());
    }

    private void addOpenings() {
        for (int i = 1; i <= size.openings(); i++) {
            int index = random.nextInt(segments.size());
            Segment segment = segments.get(index);
            List<Opening> openings = new ArrayList<>(segment.openings());
            openings.add(opening("O" + i, segment.length()));
            segments.set(index, segment.withOpenings(openings));
        }
    }

    private Opening opening(String id, Length within) {
        Length position = Length.ofMicrometres(random.nextLong(within.micrometres() + 1));
        return new Opening(
                id,
                "opening " + id,
                pick(List.of(OpeningKind.values())),
                position,
                length(10 + random.nextInt(30)),
                pick(List.of(PassDirection.values())));
    }

    private Device device(String id) {
        List<Point> points = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 1; i <= count; i++) {
            points.add(
                    new Point(
                            Integer.toString(i),
                            pick(nodes).id(),
                            length(random.nextInt(300)),
                            maybe(List.of(1, 2, 50))));
        }
        Current load = random.nextBoolean() ? Current.ofMilliamperes(random.nextInt(9000)) : null;
        DeviceKind kind = pick(List.of(DeviceKind.values()));
        return new Device(id, "device " + id, kind, load, particulars(kind, points), points);
    }

    private Particulars particulars(DeviceKind kind, List<Point> points) {
        boolean fused = kind == DeviceKind.FUSE_BOX || kind == DeviceKind.FUSE;
        return new Particulars(
                maybe(SERVICES),
                maybe(List.of(Current.ofMilliamperes(1 + facts.nextInt(90_000)))),
                maybe(List.of(Voltage.ofMillivolts(6_000), Voltage.ofMillivolts(12_000))),
                maybe(List.of(EarthPolarity.values())),
                fused ? fuses(points) : List.of());
    }

    private List<FittedFuse> fuses(List<Point> points) {
        List<FittedFuse> fuses = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            FuseStyle style = FuseStyle.values()[facts.nextInt(FuseStyle.values().length)];
            Current marked = Current.ofMilliamperes(1 + facts.nextInt(60_000));
            fuses.add(
                    new FittedFuse(points.get(i).name(), points.getFirst().name(), style, marked));
        }
        return fuses;
    }

    private <T> @Nullable T maybe(List<T> choices) {
        return facts.nextInt(3) == 0 ? choices.get(facts.nextInt(choices.size())) : null;
    }

    private Wire wire(String id) {
        int first = random.nextInt(devices.size());
        int second = (first + 1 + random.nextInt(devices.size() - 1)) % devices.size();
        return new Wire(
                id,
                "circuit " + random.nextInt(9),
                WireColour.parse(pick(COLOURS)),
                pick(SIZES),
                end(devices.get(first)),
                end(devices.get(second)),
                pick(List.of(Condition.values())));
    }

    private WireEnd end(Device device) {
        return new WireEnd(
                device.id(),
                pick(device.points()).name(),
                pick(TERMINALS),
                maybe(List.of(Fitting.values())));
    }

    private Length length(int aboutMm) {
        return Length.ofMicrometres(aboutMm * 1_000L + random.nextInt(1_000));
    }

    private <T> T pick(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
