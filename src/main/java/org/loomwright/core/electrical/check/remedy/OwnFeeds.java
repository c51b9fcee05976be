package org.loomwright.core.electrical.check.remedy;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendment.MoveWireEnd;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.ElectricalTables;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.electrical.check.remedy.Proposal.Kind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Fused feeds of their own for what a wire feeds: through a relay at the far end of the wire, which then carries the current of a coil;
 * or in the place of the wire's feed. The fuse sits at the feed; it is the smallest blade that the load keeps within the given share,
 * and the new wires are thick enough for it. Immutable and thread-safe.
 */
public final class OwnFeeds {

    /** Near enough for the rule about bare wire between a source and its fuse, where the stud's own tail allows. */
    private static final long NEAR_MM = 170;

    private static final long SHORTEST_TAIL_MM = 40;
    private static final Length TAIL = Length.ofMillimetres(80);
    private static final String BLADE = "blade-6.3";
    private static final String MAKE = "/0.30";

    private final Loom loom;
    private final Catalogue catalogue;
    private final ElectricalTables tables;
    private final Ratio fuseLoad;

    /**
     * @param loom a proven loom
     * @param catalogue the tables that it refers to
     * @param tables fuses
     * @param fuseLoad most share of its continuous current that a fuse should carry
     */
    public OwnFeeds(Loom loom, Catalogue catalogue, ElectricalTables tables, Ratio fuseLoad) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.tables = tables;
        this.fuseLoad = fuseLoad;
    }

    /**
     * What is to get a feed of its own.
     *
     * @param wire the wire whose current is too much for what comes before it
     * @param load the end of it that is farther from the source
     * @param current the current that it carries now
     * @param left what may be left of the rating of a wire in the fullest bundle, more than 0
     */
    public record Request(Wire wire, Side load, Current current, Ratio left) {}

    /** @return a relay at the far end of the wire, for every place that it could be fed from, the best first */
    public List<Proposal> relays(Request request) {
        return Feeds.of(loom).stream().flatMap(feed -> relay(request, feed).stream()).toList();
    }

    /** @return another feed for the wire, for every place that it could have, the best first */
    public List<Proposal> feeds(Request request) {
        return Feeds.of(loom).stream().flatMap(feed -> feed(request, feed).stream()).toList();
    }

    private Optional<Proposal> relay(Request request, WireEnd feed) {
        Wire wire = request.wire();
        WireEnd far = wire.end(request.load());
        return parts(request, feed)
                .map(
                        parts -> {
                            String relay = free("RELAY-" + wire.id());
                            String node = loom.getPoint(far).node();
                            List<Amendment> amendments = new ArrayList<>();
                            amendments.add(add(relayDevice(relay, wire, node)));
                            amendments.add(add(parts.fuse()));
                            amendments.add(move(wire, request.load(), end(relay, "86", far)));
                            amendments.add(add(parts.feedWire()));
                            amendments.add(
                                    add(
                                            wire(
                                                    wire,
                                                    "RELAY-FEED-" + wire.id(),
                                                    "P",
                                                    parts.size(),
                                                    end(parts.fuse().id(), "OUT", far),
                                                    end(relay, "30", far))));
                            amendments.add(
                                    add(
                                            wire(
                                                    wire,
                                                    "RELAY-OUT-" + wire.id(),
                                                    wire.colour().toString(),
                                                    parts.size(),
                                                    end(relay, "87", far),
                                                    far)));
                            return new Proposal(
                                    Kind.RELAY,
                                    "Fit a relay where wire %s ends at %s, its coil on that wire, its contact fed from %s through a %s A blade fuse beside it in %s."
                                            .formatted(
                                                    wire.id(),
                                                    far.place(),
                                                    feed.place(),
                                                    parts.amperes(),
                                                    parts.size()),
                                    amendments,
                                    0);
                        });
    }

    private Optional<Proposal> feed(Request request, WireEnd feed) {
        Wire wire = request.wire();
        Side near = request.load() == Side.A ? Side.B : Side.A;
        WireEnd old = wire.end(near);
        if (old.place().equals(feed.place())) {
            return Optional.empty();
        }
        boolean leadsToFuse =
                loom.getDevice(wire.end(request.load()).device()).kind() == DeviceKind.FUSE;
        if (leadsToFuse) {
            WireEnd to = new WireEnd(feed.device(), feed.point(), feed.terminal());
            return Optional.of(
                    new Proposal(
                            Kind.OTHER_FEED,
                            "Feed wire %s from %s instead of %s."
                                    .formatted(wire.id(), feed.place(), old.place()),
                            List.of(move(wire, near, to)),
                            0));
        }
        return parts(request, feed)
                .map(
                        parts ->
                                new Proposal(
                                        Kind.OTHER_FEED,
                                        "Feed wire %s from %s instead of %s, through a %s A blade fuse of its own beside it; it is then live whenever that is."
                                                .formatted(
                                                        wire.id(),
                                                        feed.place(),
                                                        old.place(),
                                                        parts.amperes()),
                                        List.of(
                                                add(parts.fuse()),
                                                add(parts.feedWire()),
                                                move(
                                                        wire,
                                                        near,
                                                        end(parts.fuse().id(), "OUT", old))),
                                        0));
    }

    /** The fuse beside the feed and the wire to it. */
    private record Parts(Device fuse, Wire feedWire, String amperes, String size) {}

    private Optional<Parts> parts(Request request, WireEnd feed) {
        return fuseFor(request.current())
                .flatMap(
                        fuse ->
                                sizeFor(fuse.continuous(), request.left())
                                        .map(size -> parts(request.wire(), feed, fuse, size)));
    }

    private Parts parts(Wire wire, WireEnd feed, FuseRating fuse, ConductorSize size) {
        Point stud = loom.getPoint(feed);
        long studMm = stud.tail().micrometres() / 1_000;
        Length tail = Length.ofMillimetres(Math.max(SHORTEST_TAIL_MM, NEAR_MM - studMm));
        String id = free("FUSE-" + wire.id());
        Device device =
                new Device(
                        id,
                        "fuse for " + wire.circuit(),
                        DeviceKind.FUSE,
                        null,
                        new Particulars(
                                null,
                                null,
                                null,
                                null,
                                List.of(
                                        new FittedFuse(
                                                "IN", "OUT", FuseStyle.BLADE, fuse.marked()))),
                        List.of(
                                new Point("IN", stud.node(), tail),
                                new Point("OUT", stud.node(), tail)));
        Wire feedWire =
                wire(
                        wire,
                        "FEED-" + wire.id(),
                        "N",
                        size.designation(),
                        new WireEnd(feed.device(), feed.point(), feed.terminal()),
                        end(id, "IN", feed));
        return new Parts(
                device, feedWire, fuse.marked().toAmperes().toPlainString(), size.designation());
    }

    private Optional<FuseRating> fuseFor(Current load) {
        return tables.fuses().stream()
                .filter(fuse -> fuse.style() == FuseStyle.BLADE)
                .filter(
                        fuse ->
                                fuse.continuous().toDoubleAmperes() * fuseLoad.toDouble()
                                        >= load.toDoubleAmperes())
                .min(Comparator.comparing(FuseRating::continuous));
    }

    private Optional<ConductorSize> sizeFor(Current fuse, Ratio left) {
        return catalogue.sizes().stream()
                .filter(size -> size.designation().endsWith(MAKE))
                .filter(
                        size ->
                                size.rating().toDoubleAmperes() * left.toDouble()
                                        >= fuse.toDoubleAmperes())
                .min(
                        Comparator.comparing(ConductorSize::metal)
                                .thenComparing(ConductorSize::designation));
    }

    private Device relayDevice(String id, Wire wire, String node) {
        return new Device(
                id,
                "relay for " + wire.circuit(),
                DeviceKind.RELAY,
                null,
                List.of(
                        new Point("30", node, TAIL),
                        new Point("86", node, TAIL),
                        new Point("87", node, TAIL)));
    }

    private WireEnd end(String device, String point, WireEnd like) {
        String terminal = catalogue.findTerminal(BLADE).isPresent() ? BLADE : like.terminal();
        return new WireEnd(device, point, terminal);
    }

    private Wire wire(Wire like, String id, String colour, String size, WireEnd a, WireEnd b) {
        WireColour wished = WireColour.parse(colour);
        return new Wire(
                freeWire(id),
                like.circuit(),
                catalogue.hasColour(wished) ? wished : like.colour(),
                size,
                a,
                b,
                Condition.NEW);
    }

    private static Amendment add(Device device) {
        return new AddDevice("add-" + device.id(), "Takes a load off another way.", device);
    }

    private static Amendment add(Wire wire) {
        return new AddWire("add-" + wire.id(), "Takes a load off another way.", wire);
    }

    private static Amendment move(Wire wire, Side side, WireEnd to) {
        return new MoveWireEnd(
                "move-" + wire.id(), "Takes a load off another way.", wire.id(), side, to);
    }

    private String free(String wished) {
        String id = wished;
        for (int next = 2; loom.devices().containsKey(id); next++) {
            id = wished + "-" + next;
        }
        return id;
    }

    private String freeWire(String wished) {
        String id = wished;
        for (int next = 2; loom.wires().containsKey(id); next++) {
            id = wished + "-" + next;
        }
        return id;
    }
}
