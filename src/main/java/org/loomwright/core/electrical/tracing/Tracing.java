package org.loomwright.core.electrical.tracing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * How every wire of one loom is fed and what it serves. Every contact counts as closed, so a wire's supply is what it can have, not what
 * it has at a moment. Cost: n log n in the number of wires and elements. Immutable and thread-safe.
 *
 * <p>A switch that serves {@code ignition} or {@code lighting} decides what is fed behind it, by its contact: names that begin with HEAD,
 * SIDE or TAIL, START, IGN; any other contact of an ignition switch counts as its ignition position.
 */
public final class Tracing {

    private final Map<String, WireTrace> traces = new LinkedHashMap<>();
    private final Ways ways;
    private final Supplies supplies;
    private final Map<String, SortedSet<String>> loads = new HashMap<>();

    private Tracing(Loom loom, Catalogue catalogue, Behaviours behaviours) {
        ways = new Ways(loom, behaviours);
        supplies = new Supplies(loom, catalogue);
        ways.loads().forEach(this::noteLoad);
        loom.wires().values().forEach(wire -> traces.put(wire.id(), trace(wire)));
    }

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     * @param behaviours what devices do
     * @return the tracing of the loom
     */
    public static Tracing of(Loom loom, Catalogue catalogue, Behaviours behaviours) {
        return new Tracing(loom, catalogue, behaviours);
    }

    /**
     * @param device any device
     * @param catalogue the services
     * @return what it serves: as somebody said, or else as its name says
     */
    public static Optional<Service> serviceOf(Device device, Catalogue catalogue) {
        String said = device.particulars().serves();
        return said == null
                ? catalogue.findServiceByWords(device.name())
                : catalogue.findService(said);
    }

    /**
     * @param wire id of a wire of this loom
     * @return what was found out about it
     * @throws IllegalArgumentException if the loom has no such wire
     */
    public WireTrace get(String wire) {
        WireTrace trace = traces.get(wire);
        if (trace == null) {
            throw new IllegalArgumentException("no wire " + wire + " was traced");
        }
        return trace;
    }

    /** @return every wire, in the order of their ids */
    public List<WireTrace> all() {
        return List.copyOf(traces.values());
    }

    /**
     * @param place {@code device/point}
     * @return what a wire from that point would be fed from, if a source reaches it without passing a load
     */
    public Optional<Supply> supplyAt(String place) {
        return Optional.ofNullable(ways.fromSource().get(place))
                .filter(reached -> reached.loads() == 0 && !ways.isReturn(place))
                .map(supplies::of);
    }

    /**
     * @param place {@code device/point}
     * @return what the way from the source to it leads through, if a source reaches it without passing a load
     */
    public Optional<List<Passed>> pathTo(String place) {
        return Optional.ofNullable(ways.fromSource().get(place))
                .filter(reached -> reached.loads() == 0 && !ways.isReturn(place))
                .map(Reached::path);
    }

    /** @return whether copper and earth screws alone join {@code device/point} to the body */
    public boolean isReturn(String place) {
        return ways.isReturn(place);
    }

    /** @return whether anything but a load, closed, joins {@code device/point} to the body */
    public boolean reachesBody(String place) {
        return ways.toBody().containsKey(place);
    }

    /** A load counts for every wire on its way from the source, or from both where it stands between two, and on its way to the body. */
    private void noteLoad(Placed load) {
        Reached from = ways.fromSource().get(load.fromNode());
        Reached to = ways.fromSource().get(load.toNode());
        boolean fedAtFrom = isFed(load.fromNode(), from);
        boolean fedAtTo = isFed(load.toNode(), to);
        String device = load.device().id();
        if (fedAtFrom) {
            note(from, device);
        }
        if (fedAtTo) {
            note(to, device);
        }
        if (fedAtFrom != fedAtTo) {
            note(ways.toBody().get(fedAtFrom ? load.toNode() : load.fromNode()), device);
        }
    }

    private boolean isFed(String node, @Nullable Reached reached) {
        return reached != null && reached.loads() == 0 && !ways.isReturn(node);
    }

    private static boolean better(@Nullable Reached one, @Nullable Reached other) {
        return one != null && other != null && Reached.BEST_FIRST.compare(one, other) < 0;
    }

    private void note(@Nullable Reached way, String device) {
        for (Reached at = way; at != null && at.last() != null; at = at.before()) {
            String wire = at.last().wire();
            if (wire != null) {
                loads.computeIfAbsent(wire, id -> new TreeSet<>()).add(device);
            }
        }
    }

    private WireTrace trace(Wire wire) {
        Reached a = ways.fromSource().get(wire.a().place());
        Reached b = ways.fromSource().get(wire.b().place());
        boolean fromB = a == null || better(b, a);
        Reached reached = fromB ? b : a;
        SortedSet<String> through = loadsThrough(wire, reached);
        return new WireTrace(
                wire.id(),
                role(wire, reached),
                reached == null ? Supply.NONE : supplies.of(reached),
                reached == null ? null : fromB ? Side.B : Side.A,
                reached == null ? List.of() : reached.path(),
                through,
                serves(wire, through));
    }

    /** Where several ways lead on to the body a load takes one of them; the others still belong to the load that the way came through. */
    private SortedSet<String> loadsThrough(Wire wire, @Nullable Reached reached) {
        SortedSet<String> through = new TreeSet<>(loads.getOrDefault(wire.id(), new TreeSet<>()));
        if (reached != null && reached.loads() > 0) {
            reached.path().stream()
                    .filter(it -> takesCurrent(it.element()))
                    .forEach(it -> through.add(it.device()));
        }
        return through;
    }

    private static boolean takesCurrent(Element element) {
        return element == Element.LOAD || element == Element.COIL || element == Element.FIELD;
    }

    private Role role(Wire wire, @Nullable Reached reached) {
        if (reached != null && reached.loads() == 0) {
            return Role.LIVE;
        }
        if (ways.isReturn(wire.a().place())) {
            return Role.RETURN;
        }
        boolean isJoined = reached != null || ways.toBody().containsKey(wire.a().place());
        return isJoined ? Role.EARTH_SIDE : Role.LOOSE;
    }

    private SortedSet<String> serves(Wire wire, Set<String> through) {
        Set<String> devices =
                through.isEmpty()
                        ? new TreeSet<>(List.of(wire.a().device(), wire.b().device()))
                        : through;
        SortedSet<String> serves = new TreeSet<>();
        devices.forEach(device -> supplies.serviceOf(device).ifPresent(serves::add));
        return serves;
    }
}
