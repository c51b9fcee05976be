package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.ChangePart;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes the changes to what is in the loom already. */
final class ChangeMaker {

    private final Draft draft;
    private final Sizing sizing;
    private final Terminals terminals;

    /** A wire of the loom and the end of it that is meant. */
    private record Meant(Wire wire, Side side) {}

    ChangeMaker(Draft draft, Sizing sizing) {
        this.draft = draft;
        this.sizing = sizing;
        this.terminals = new Terminals(draft);
    }

    void make() {
        draft.recipe.changes().stream()
                .filter(change -> change.when().holds(draft.facts))
                .forEach(this::make);
    }

    private void make(ChangePart change) {
        switch (change) {
            case ChangePart.MoveEnds move -> move(move);
            case ChangePart.Renew renew -> renew(renew);
            case ChangePart.Remove remove ->
                    wires(remove.wires())
                            .forEach(
                                    it ->
                                            draft.amendments.add(
                                                    new Amendment.RemoveWire(
                                                            draft.ids.next("A"),
                                                            remove.reason(),
                                                            it.wire().id())));
            case ChangePart.RemoveDevice remove -> {}
            case ChangePart.Become become -> become(become);
            case ChangePart.Vehicle vehicle -> vehicle(vehicle);
        }
    }

    /** Takes out devices that nothing is left on; after all else. */
    void clear() {
        for (ChangePart change : draft.recipe.changes()) {
            if (change instanceof ChangePart.RemoveDevice remove
                    && remove.when().holds(draft.facts)) {
                draft.finds
                        .all(remove.key())
                        .forEach(
                                device ->
                                        draft.amendments.add(
                                                new Amendment.RemoveDevice(
                                                        draft.ids.next("A"),
                                                        remove.reason(),
                                                        device.id())));
            }
        }
    }

    private List<Meant> wires(ChangePart.Wires wanted) {
        if (wanted.on().startsWith("answer:")) {
            return answered(wanted.on().substring("answer:".length()));
        }
        int slash = wanted.on().indexOf('/');
        String point = wanted.on().substring(slash + 1);
        Set<String> places =
                draft.finds.all(wanted.on().substring(0, slash)).stream()
                        .map(device -> device.id() + "/" + point)
                        .collect(Collectors.toSet());
        List<Meant> meant = new ArrayList<>();
        for (Wire wire : draft.loom.wires().values()) {
            for (Side side : Side.values()) {
                WireEnd far = wire.end(side == Side.A ? Side.B : Side.A);
                if (places.contains(wire.end(side).place()) && isOn(far, wanted.other())) {
                    meant.add(new Meant(wire, side));
                }
            }
        }
        return meant;
    }

    private boolean isOn(WireEnd end, @Nullable String key) {
        return key == null
                || draft.finds.all(key).stream().map(Device::id).anyMatch(end.device()::equals);
    }

    private List<Meant> answered(String question) {
        String wire = draft.facts.get(question);
        if (wire == null) {
            return List.of();
        }
        Side source = draft.tracing.get(wire).source();
        return List.of(new Meant(draft.loom.getWire(wire), source == null ? Side.A : source));
    }

    private void move(ChangePart.MoveEnds move) {
        Place to = draft.place(move.to());
        for (Meant meant : wires(move.wires())) {
            draft.countEnd(to);
            draft.amendments.add(
                    new Amendment.MoveWireEnd(
                            draft.ids.next("A"),
                            move.reason(),
                            meant.wire().id(),
                            meant.side(),
                            new WireEnd(
                                    to.device().id(),
                                    to.point().name(),
                                    terminals.at(to, metal(meant.wire())),
                                    meant.wire().end(meant.side()).fitted())));
        }
    }

    private CrossSection metal(Wire wire) {
        return draft.bench.catalogue().getSize(wire.size()).metal();
    }

    private void renew(ChangePart.Renew renew) {
        Current bearing = renew.bearing() == null ? Current.ZERO : draft.current(renew.bearing());
        Current least = WireMaker.most(draft.load(renew.carries()), bearing);
        String behind = renew.behind();
        Current fuse =
                behind == null
                        ? Current.ZERO
                        : new Protection(draft, List.of())
                                .size(
                                        draft.place(behind).device(),
                                        draft.place(behind).point().name());
        for (Meant meant : wires(renew.wires())) {
            renew(meant.wire(), least, fuse, renew.reason());
        }
    }

    /** A wire carries its load by itself, and what its fuse lets through beside the loaded wires of its bundle. */
    private void renew(Wire wire, Current least, Current fuse, String reason) {
        Current needed = WireMaker.most(least, fuse);
        List<Segment> route = draft.routes.of(wire);
        ConductorSize old = draft.bench.catalogue().getSize(wire.size());
        boolean isEnough =
                old.rating().compareTo(needed) >= 0
                        && sizing.derated(old, route).left().compareTo(fuse) >= 0;
        if (isEnough) {
            return;
        }
        Optional<ConductorSize> size = sizing.smallestFor(needed, fuse, route);
        if (size.isEmpty()) {
            draft.refuse(
                    "no-size",
                    "Wire %s is to bear %s, which no size of the family %s does."
                            .formatted(wire.id(), needed, draft.bench.settings().family()));
            return;
        }
        draft.amendments.add(
                new Amendment.ReplaceWire(
                        draft.ids.next("A"),
                        reason,
                        wire.id(),
                        wire.colour(),
                        size.get().designation()));
        draft.note(
                ThingKind.WIRE,
                wire.id(),
                "renewed",
                "%s carried %s and is to bear %s: renewed in %s."
                        .formatted(
                                wire.size(),
                                draft.bench.catalogue().getSize(wire.size()).rating(),
                                needed,
                                size.get().designation()),
                size.get().ratingProvenance());
    }

    private void become(ChangePart.Become become) {
        Current load = become.load() == null ? null : draft.current(become.load());
        Current rating = become.rating() == null ? null : draft.current(become.rating());
        for (Device device : draft.finds.all(become.key())) {
            Particulars old = device.particulars();
            draft.amendments.add(
                    new Amendment.ChangeDevice(
                            draft.ids.next("A"),
                            become.reason(),
                            device.id(),
                            draft.filled(become.name()),
                            become.kind(),
                            load,
                            new Particulars(
                                    old.serves(),
                                    rating,
                                    old.voltage(),
                                    old.needsEarth(),
                                    old.fuses())));
        }
    }

    private void vehicle(ChangePart.Vehicle vehicle) {
        VehicleSheet sheet = draft.loom.document().vehicle();
        EarthPolarity earth =
                vehicle.earth() == null
                        ? sheet.earth()
                        : EarthPolarity.valueOf(vehicle.earth().toUpperCase(Locale.ROOT));
        Voltage system =
                vehicle.volts() == null
                        ? sheet.system()
                        : Voltage.ofVolts(BigDecimal.valueOf(vehicle.volts()));
        draft.amendments.add(
                new Amendment.ChangeVehicle(draft.ids.next("A"), vehicle.reason(), earth, system));
    }
}
