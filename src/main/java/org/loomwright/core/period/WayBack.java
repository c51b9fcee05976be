package org.loomwright.core.period;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.AmendedLoom.TakenOut;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.period.BackStep.Act;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What has to be done to have the stock loom again, from the parts in which the amended one differs. Added wires may stay under the cover. */
final class WayBack {

    private static final Comparator<BackStep> ORDER =
            Comparator.comparing(BackStep::act)
                    .thenComparing(step -> step.subject().kind())
                    .thenComparing(step -> step.subject().id())
                    .thenComparing(BackStep::text);

    private final Comparison comparison;
    private final Tracing tracing;
    private final List<BackStep> steps = new ArrayList<>();

    private WayBack(Comparison comparison, Tracing tracing) {
        this.comparison = comparison;
        this.tracing = tracing;
    }

    static List<BackStep> of(Comparison comparison, Tracing tracing) {
        WayBack back = new WayBack(comparison, tracing);
        back.addVehicle();
        comparison.loom().wires().values().forEach(back::addWire);
        comparison.loom().devices().values().forEach(back::addDevice);
        comparison.amended().takenOut().forEach(back::addTakenOut);
        back.addOpenings();
        back.addSegments();
        return back.steps.stream().sorted(ORDER).toList();
    }

    private void add(Act act, ThingKind kind, String id, String text) {
        steps.add(new BackStep(act, Subject.of(kind, id), text));
    }

    private void addVehicle() {
        VehicleSheet before = comparison.stock().document().vehicle();
        VehicleSheet now = comparison.loom().document().vehicle();
        if (before.earth() != now.earth()) {
            add(
                    Act.VEHICLE,
                    ThingKind.VEHICLE,
                    "",
                    "Turn the battery back to %s, and re-polarise the dynamo before it is connected."
                            .formatted(before.earth().words() + " earth"));
        }
        if (!before.system().equals(now.system())) {
            add(
                    Act.VEHICLE,
                    ThingKind.VEHICLE,
                    "",
                    "Go back to a battery of %s, with bulbs and devices for it."
                            .formatted(before.system()));
        }
    }

    private void addWire(Wire wire) {
        Wire before = comparison.stock().wires().get(wire.id());
        if (before == null) {
            add(Act.CAP_WIRE, ThingKind.WIRE, wire.id(), cap(wire));
            return;
        }
        for (Side side : Side.values()) {
            addEnd(wire, side, before.end(side));
        }
        if (!wire.colour().equals(before.colour()) || !wire.size().equals(before.size())) {
            add(
                    Act.REPLACE_WIRE_BACK,
                    ThingKind.WIRE,
                    wire.id(),
                    "Wire %s was %s %s; it can be had again only with the cover off, so it may stay."
                            .formatted(wire.id(), before.colour().letters(), before.size()));
        }
    }

    private String cap(Wire wire) {
        WireTrace trace = tracing.get(wire.id());
        Side source = trace.source();
        boolean isLive = trace.role() == Role.LIVE;
        WireEnd first = isLive && source == Side.B ? wire.b() : wire.a();
        WireEnd second = first.equals(wire.a()) ? wire.b() : wire.a();
        return "Take wire %s (%s, %s) off at %s%s, then at %s; cap both ends and tie them back. It may stay under the cover."
                .formatted(
                        wire.id(),
                        wire.colour().letters(),
                        wire.circuit(),
                        first.place(),
                        isLive ? ", its live end" : "",
                        second.place());
    }

    private void addEnd(Wire wire, Side side, WireEnd before) {
        WireEnd now = wire.end(side);
        if (!now.isOnSamePointAs(before)) {
            add(
                    Act.MOVE_END_BACK,
                    ThingKind.WIRE,
                    wire.id(),
                    "Move end %s of wire %s from %s back to %s, with %s."
                            .formatted(
                                    side, wire.id(), now.place(), before.place(), named(before)));
        } else if (!now.terminal().equals(before.terminal())) {
            add(
                    Act.CHANGE_TERMINAL_BACK,
                    ThingKind.WIRE,
                    wire.id(),
                    "Put a %s back on end %s of wire %s at %s."
                            .formatted(named(before), side, wire.id(), before.place()));
        }
    }

    private String named(WireEnd end) {
        return comparison.catalogue().getTerminal(end.terminal()).name();
    }

    private void addDevice(Device device) {
        Device before = comparison.stock().devices().get(device.id());
        if (before == null) {
            add(
                    Act.TAKE_OUT_DEVICE,
                    ThingKind.DEVICE,
                    device.id(),
                    "Take out %s (%s) and keep its fixings.".formatted(device.id(), device.name()));
        } else if (!before.equals(device)) {
            add(
                    Act.CHANGE_DEVICE_BACK,
                    ThingKind.DEVICE,
                    device.id(),
                    "Make %s again what it was: %s.".formatted(device.id(), before.name()));
        }
    }

    /** Nodes and points come back with their segments and devices. */
    private void addTakenOut(TakenOut gone) {
        Subject thing = gone.thing();
        String what = stockWords(thing);
        if (what != null) {
            steps.add(
                    new BackStep(
                            Act.PUT_BACK,
                            thing,
                            "Put back %s, which was taken out; keep it with the vehicle."
                                    .formatted(what)));
        }
    }

    private @Nullable String stockWords(Subject thing) {
        return switch (thing.kind()) {
            case WIRE -> {
                Wire wire = comparison.stock().getWire(thing.id());
                yield "wire %s (%s %s) from %s to %s"
                        .formatted(
                                wire.id(),
                                wire.colour().letters(),
                                wire.size(),
                                wire.a().place(),
                                wire.b().place());
            }
            case DEVICE ->
                    "%s (%s)"
                            .formatted(thing.id(), comparison.stock().getDevice(thing.id()).name());
            case SEGMENT, OPENING -> thing.words();
            case LOOM,
                    VEHICLE,
                    NODE,
                    POINT,
                    CHECK,
                    AMENDMENT,
                    REQUEST,
                    SPECIFICATION,
                    SETTINGS,
                    WORK_ORDER ->
                    null;
        };
    }

    private void addOpenings() {
        for (Segment segment : comparison.loom().segments().values()) {
            for (Opening opening : segment.openings()) {
                if (comparison.isAdded(ThingKind.OPENING, opening.id())) {
                    add(
                            Act.CLOSE_OPENING,
                            ThingKind.OPENING,
                            opening.id(),
                            "Take out the %s %s (%s) and close what it leaves with a blanking plug."
                                    .formatted(
                                            opening.kind().words(), opening.id(), opening.name()));
                }
            }
        }
    }

    private void addSegments() {
        Map<String, Length> lengths = new TreeMap<>();
        Map<String, Segment> firsts = new TreeMap<>();
        for (Segment segment : comparison.loom().walk()) {
            String recorded = comparison.amended().piece(segment.id()).recorded().id();
            lengths.merge(recorded, segment.length(), Length::plus);
            firsts.putIfAbsent(recorded, segment);
        }
        Neighbours neighbours = new Neighbours(comparison);
        firsts.forEach(
                (recorded, first) -> {
                    Segment before = comparison.stock().segments().get(recorded);
                    if (before == null) {
                        tieBack(first);
                    } else if (!neighbours.isAsRecorded(first)
                            || !before.length().equals(lengths.get(recorded))) {
                        recover(first, before);
                    }
                });
    }

    private void tieBack(Segment segment) {
        add(
                Act.TIE_BACK_LEG,
                ThingKind.SEGMENT,
                segment.id(),
                "Tie the added leg %s back out of sight, or take it off when the cover of its breakout is next open."
                        .formatted(segment.id()));
    }

    private void recover(Segment segment, Segment before) {
        boolean isAssumed = before.finish().evidence().kind() == EvidenceKind.ASSUMED;
        add(
                Act.RECOVER_SEGMENT,
                ThingKind.SEGMENT,
                segment.id(),
                "Segment %s was %s long and covered with %s; that comes back only with a new cover."
                        .formatted(
                                before.id(), before.length(), Neighbours.words(before.finish())));
    }
}
