package org.loomwright.core.electrical.fault;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.electrical.FuseMarking;
import org.loomwright.core.electrical.FusingCurrent;
import org.loomwright.core.electrical.HeatingTime;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.simulation.ShortedNet;
import org.loomwright.core.electrical.simulation.ShortedNet.Drawn;
import org.loomwright.core.electrical.simulation.ShortedNet.Share;
import org.loomwright.core.electrical.simulation.Wiring.Conductor;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;
import org.loomwright.core.quantity.Voltage;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * A dead short to the body at the end of every wire, one after the other.
 *
 * <p>The short is taken at the end away from the source. There least flows, so the fuse takes longest; a short nearer the source is one at the
 * end of the wire before. Left out are wires that no source reaches in the scenario, returns, and wires behind a load: there a short
 * only switches the load on.
 *
 * <p>Cost: one back-substitution for every point with a wire and one pass over the branches. Immutable and thread-safe.
 */
public final class ShortCircuits {

    private static final Duration ONE_SECOND = Duration.ofSeconds(1);

    private final Loom loom;
    private final Catalogue catalogue;
    private final ElectricalTables tables;
    private final FaultSettings settings;
    private final Map<String, SortedSet<String>> dark = new HashMap<>();

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     * @param tables what the tables say about current
     * @param behaviours what devices do
     * @param settings what is taken for granted
     */
    public ShortCircuits(
            Loom loom,
            Catalogue catalogue,
            ElectricalTables tables,
            Behaviours behaviours,
            FaultSettings settings) {
        this(loom, catalogue, tables, settings, new FuseLosses(loom, behaviours).all());
    }

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     * @param tables what the tables say about current
     * @param settings what is taken for granted
     * @param losses what goes dark with each fuse of that loom
     */
    public ShortCircuits(
            Loom loom,
            Catalogue catalogue,
            ElectricalTables tables,
            FaultSettings settings,
            List<FuseLoss> losses) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.tables = tables;
        this.settings = settings;
        for (FuseLoss loss : losses) {
            dark.put(key(loss.device(), loss.from(), loss.to()), loss.dark());
        }
    }

    private static String key(String device, String from, String to) {
        return String.join("/", device, from, to);
    }

    /**
     * @param nets the same loom in each scenario
     * @return for every wire that a dead short is possible on, the worst of all scenarios, in the order of their ids
     */
    public List<ShortCircuit> worst(Collection<ShortedNet> nets) {
        Map<String, ShortCircuit> worst = new TreeMap<>();
        for (ShortedNet net : nets) {
            for (ShortCircuit now : in(net)) {
                worst.merge(now.wire(), now, ShortCircuits::worse);
            }
        }
        return List.copyOf(worst.values());
    }

    private static ShortCircuit worse(ShortCircuit one, ShortCircuit other) {
        return ShortCircuit.WORST_FIRST.compare(one, other) <= 0 ? one : other;
    }

    /**
     * @param net this loom in one scenario
     * @return every wire that a dead short is possible on in it, in the order of their ids
     */
    public List<ShortCircuit> in(ShortedNet net) {
        Map<String, Drawn> drawn = new HashMap<>();
        Function<String, Drawn> at = place -> drawn.computeIfAbsent(place, net::at);
        List<ShortCircuit> shorts = new ArrayList<>();
        for (Wire wire : loom.wires().values()) {
            if (!isLive(net.open(wire.a().place())) && !isLive(net.open(wire.b().place()))) {
                continue;
            }
            Drawn a = at.apply(wire.a().place());
            Drawn b = at.apply(wire.b().place());
            Drawn far = carried(a, wire) > carried(b, wire) ? a : b;
            if (carried(far, wire) > 0 && isLive(far.open()) && !isBehindLoad(far)) {
                shorts.add(shortCircuit(wire, far, net));
            }
        }
        return shorts;
    }

    private static long carried(Drawn drawn, Wire wire) {
        return drawn.wires().stream()
                .filter(share -> share.thing().wire().equals(wire.id()))
                .mapToLong(share -> Math.abs(share.caused().milliamperes()))
                .findFirst()
                .orElse(0);
    }

    /** A return carries next to no voltage against the body; a feed has nearly all of the system's. */
    private boolean isLive(Voltage open) {
        Voltage system = loom.document().vehicle().system();
        return 2 * Math.abs(open.millivolts()) > system.millivolts();
    }

    private static boolean isBehindLoad(Drawn drawn) {
        return drawn.elements().stream().anyMatch(share -> limits(share, drawn));
    }

    /** A dynamo's field takes a constant current beside the short; what the short changes in it says nothing. */
    private static boolean limits(Share<Placed> share, Drawn drawn) {
        return switch (share.thing().element()) {
            case LOAD, COIL -> causes(share, drawn, 50);
            case FIELD ->
                    2 * Math.abs(share.current().milliamperes())
                            >= Math.abs(drawn.current().milliamperes());
            case SOURCE,
                    GENERATOR,
                    CUT_OUT,
                    LINK,
                    FUSE,
                    CONTACT,
                    SENSE,
                    MAKE,
                    BREAK,
                    ENGINE_OFF,
                    EARTH,
                    NONE ->
                    false;
        };
    }

    private static boolean causes(Share<Placed> share, Drawn drawn, int percent) {
        return 100 * Math.abs(share.caused().milliamperes())
                >= percent * Math.abs(drawn.current().milliamperes());
    }

    private ShortCircuit shortCircuit(Wire wire, Drawn drawn, ShortedNet net) {
        Temperature before = net.scenario().conductors();
        List<Heated> heated =
                drawn.wires().stream()
                        .map(share -> heated(share, before))
                        .flatMap(Optional::stream)
                        .sorted(Comparator.comparing(Heated::harmed).thenComparing(Heated::wire))
                        .toList();
        FuseOnWay fuse = fuse(drawn);
        return new ShortCircuit(
                wire.id(),
                net.scenario().name(),
                drawn.place(),
                magnitude(drawn.current()),
                heated,
                fuse,
                opensFirst(fuse, heated),
                fuse == null ? new TreeSet<>() : dark(fuse));
    }

    private static Current magnitude(Current current) {
        return Current.ofMilliamperes(Math.abs(current.milliamperes()));
    }

    private static boolean opensFirst(@Nullable FuseOnWay fuse, List<Heated> heated) {
        return fuse != null
                && fuse.within() != null
                && heated.stream().allMatch(wire -> wire.harmed().compareTo(fuse.within()) >= 0);
    }

    private SortedSet<String> dark(FuseOnWay fuse) {
        return Objects.requireNonNull(dark.get(key(fuse.device(), fuse.from(), fuse.to())));
    }

    private Optional<Heated> heated(Share<Conductor> share, Temperature before) {
        ConductorSize size = catalogue.getSize(share.thing().size());
        Current current = magnitude(share.current());
        if (current.compareTo(size.rating()) <= 0) {
            return Optional.empty();
        }
        double amperes = current.toDoubleAmperes();
        double inOneSecond =
                FusingCurrent.onderdonk(size.metal(), ONE_SECOND, before).toDoubleAmperes();
        double meltSeconds = inOneSecond * inOneSecond / (amperes * amperes);
        return Optional.of(
                new Heated(
                        share.thing().wire(),
                        current,
                        HeatingTime.of(size.metal(), current, before, settings.insulation()),
                        Duration.ofMillis((long) (meltSeconds * 1e3))));
    }

    /** A fuse is on the way if nearly all of the current goes through it: one of two side by side stops nothing. */
    private @Nullable FuseOnWay fuse(Drawn drawn) {
        return drawn.elements().stream()
                .filter(share -> share.thing().element() == Element.FUSE)
                .filter(share -> causes(share, drawn, 90))
                .map(this::fuse)
                .min(
                        Comparator.comparing(ShortCircuits::opensAfterMillis)
                                .thenComparing(ShortCircuits::continuousMilliamperes)
                                .thenComparing(FuseOnWay::words))
                .orElse(null);
    }

    private static long opensAfterMillis(FuseOnWay fuse) {
        return fuse.within() == null ? Long.MAX_VALUE : fuse.within().toMillis();
    }

    private static long continuousMilliamperes(FuseOnWay fuse) {
        return fuse.rating() == null ? Long.MAX_VALUE : fuse.rating().continuous().milliamperes();
    }

    private FuseOnWay fuse(Share<Placed> share) {
        Placed placed = share.thing();
        Current through = magnitude(share.current());
        FuseRating rating = fitted(placed);
        return new FuseOnWay(
                placed.device().id(),
                placed.from(),
                placed.to(),
                rating,
                through,
                rating == null
                        ? null
                        : settings.opensWithin(rating.continuous(), through).orElse(null));
    }

    private @Nullable FuseRating fitted(Placed placed) {
        for (FittedFuse fuse : placed.device().particulars().fuses()) {
            boolean there =
                    fuse.from().equals(placed.from()) && fuse.to().equals(placed.to())
                            || fuse.from().equals(placed.to()) && fuse.to().equals(placed.from());
            if (there) {
                return FuseMarking.read(tables, fuse.style(), fuse.marked());
            }
        }
        return null;
    }
}
