package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The net of one scenario with what flows in it, to be walked along the current.
 *
 * <p>Cost: linear in the size of the net once, then the length of a way for each load. Immutable after construction.
 */
final class Flow {

    static final String BODY = "body";

    /** A load that takes less is as good as switched off. Own choice: a twentieth of the smallest lamp. */
    private static final long LEAST_MILLIAMPERES = 5;

    /** A dynamo that stands is a resistor with a few millivolts, not a source. */
    private static final long LEAST_SUPPLY_MILLIVOLTS = 1_000;

    private final Readings readings;
    private final Map<String, List<Edge>> at = new HashMap<>();
    private final Map<String, List<ElementReading>> byDevice = new HashMap<>();

    /**
     * A wire or an element of a device, in the direction in which its current flows.
     *
     * @param wire id of the wire, or null
     * @param element what it is if it is not a wire, or null
     * @param from place that the current comes from
     * @param to place that it goes to
     * @param milliamperes how much, not negative
     * @param millivolts what is lost on the way, or gained in a source (negative)
     */
    record Edge(
            @Nullable String wire,
            @Nullable ElementReading element,
            String from,
            String to,
            long milliamperes,
            long millivolts) {

        boolean is(Element kind) {
            return element != null && element.element() == kind;
        }

        /** Whether it does work, so that what comes before and after it is not on the way of one load alone. */
        boolean works() {
            return is(Element.LOAD)
                    || is(Element.COIL)
                    || is(Element.GENERATOR)
                    || is(Element.SOURCE);
        }

        boolean isSameAs(Edge other) {
            return element == null
                    ? wire != null && wire.equals(other.wire)
                    : element.equals(other.element);
        }
    }

    Flow(Loom loom, Readings readings) {
        this.readings = readings;
        for (WireReading reading : readings.wires()) {
            Wire wire = loom.getWire(reading.wire());
            add(
                    reading.wire(),
                    null,
                    wire.a().place(),
                    wire.b().place(),
                    reading.current().milliamperes(),
                    reading.drop().millivolts());
        }
        for (ElementReading reading : readings.elements()) {
            byDevice.computeIfAbsent(reading.device(), id -> new ArrayList<>(3)).add(reading);
            add(
                    null,
                    reading,
                    place(reading.device(), reading.from()),
                    place(reading.device(), reading.to()),
                    directed(reading),
                    reading.across().millivolts());
        }
    }

    static String place(String device, String point) {
        return point.equals(BODY) ? BODY : device + "/" + point;
    }

    /** A source that gives drives its current out at the point where it begins: inside it flows the other way. */
    private static long directed(ElementReading reading) {
        boolean gives =
                reading.element() == Element.SOURCE || reading.element() == Element.GENERATOR;
        long milliamperes = reading.current().milliamperes();
        return gives ? -milliamperes : milliamperes;
    }

    private void add(
            @Nullable String wire,
            @Nullable ElementReading element,
            String from,
            String to,
            long milliamperes,
            long millivolts) {
        Edge edge =
                milliamperes >= 0
                        ? new Edge(wire, element, from, to, milliamperes, millivolts)
                        : new Edge(wire, element, to, from, -milliamperes, -millivolts);
        at.computeIfAbsent(from, id -> new ArrayList<>(4)).add(edge);
        at.computeIfAbsent(to, id -> new ArrayList<>(4)).add(edge);
    }

    Readings readings() {
        return readings;
    }

    /** The joined elements of that device. */
    List<ElementReading> ofDevice(String device) {
        return byDevice.getOrDefault(device, List.of());
    }

    String scenario() {
        return readings.scenario().name();
    }

    /** The ways of all loads and coils that are on and of batteries that are charged, as far as nothing else that works stands on them, in the order of their devices. */
    List<LoadPath> paths() {
        List<LoadPath> paths = new ArrayList<>();
        for (ElementReading reading : readings.elements()) {
            if (isOn(reading)) {
                path(reading).ifPresent(paths::add);
            }
        }
        return paths;
    }

    private static boolean isOn(ElementReading reading) {
        long milliamperes = reading.current().milliamperes();
        return switch (reading.element()) {
            case LOAD, COIL -> Math.abs(milliamperes) >= LEAST_MILLIAMPERES;
            case SOURCE -> milliamperes <= -LEAST_MILLIAMPERES;
            case GENERATOR,
                    CUT_OUT,
                    LINK,
                    FUSE,
                    CONTACT,
                    SENSE,
                    MAKE,
                    BREAK,
                    FIELD,
                    ENGINE_OFF,
                    EARTH,
                    NONE ->
                    false;
        };
    }

    /** The way that most of the load's current takes, unless another load stands on it. */
    Optional<LoadPath> path(ElementReading load) {
        Edge through = edgeOf(load);
        List<Edge> out = new ArrayList<>();
        Optional<Edge> source = walkToSource(through.from(), out);
        if (source.isEmpty()) {
            return Optional.empty();
        }
        List<Edge> back = new ArrayList<>();
        String earth = source.get().from();
        if (!walkToEarth(through.to(), earth, back)) {
            return Optional.empty();
        }
        return Optional.of(new LoadPath(load, source.get(), out.reversed(), back));
    }

    private Edge edgeOf(ElementReading load) {
        return at.getOrDefault(place(load.device(), load.from()), List.of()).stream()
                .filter(edge -> load.equals(edge.element()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing is known of " + load));
    }

    /** Against the current to a source that gives; the edges found come nearest the load first. */
    private Optional<Edge> walkToSource(String start, List<Edge> out) {
        Set<String> seen = new HashSet<>();
        for (String node = start; !node.equals(BODY) && seen.add(node); ) {
            Edge in = strongest(node, true);
            if (in == null) {
                return Optional.empty();
            }
            if (in.works()) {
                boolean gives = in.is(Element.SOURCE) || in.is(Element.GENERATOR);
                return gives && in.millivolts() < -LEAST_SUPPLY_MILLIVOLTS
                        ? Optional.of(in)
                        : Optional.empty();
            }
            out.add(in);
            node = in.from();
        }
        return Optional.empty();
    }

    /** With the current to the earthed side of the source, through the body where it leads there. */
    private boolean walkToEarth(String start, String earth, List<Edge> back) {
        Set<String> seen = new HashSet<>();
        String node = start;
        while (!node.equals(BODY) && !node.equals(earth) && seen.add(node)) {
            Edge out = strongest(node, false);
            if (out == null || out.works()) {
                return false;
            }
            back.add(out);
            node = out.to();
        }
        return node.equals(earth) || node.equals(BODY) && walkFromBody(earth, back);
    }

    private boolean walkFromBody(String earth, List<Edge> back) {
        List<Edge> ways = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        String node = earth;
        while (!node.equals(BODY)) {
            Edge in = strongest(node, true);
            if (in == null || in.works() || !seen.add(node)) {
                return false;
            }
            ways.add(in);
            node = in.from();
        }
        back.addAll(ways.reversed());
        return true;
    }

    private @Nullable Edge strongest(String node, boolean arriving) {
        Edge strongest = null;
        for (Edge edge : at.getOrDefault(node, List.of())) {
            String end = arriving ? edge.to() : edge.from();
            if (end.equals(node)
                    && edge.milliamperes() > 0
                    && (strongest == null || edge.milliamperes() > strongest.milliamperes())) {
                strongest = edge;
            }
        }
        return strongest;
    }
}
