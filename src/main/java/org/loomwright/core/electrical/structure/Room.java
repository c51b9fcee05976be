package org.loomwright.core.electrical.structure;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Points with more wire ends than find room on them, and earth screws under too many rings. */
final class Room {

    private static final int MOST_NAMED = 5;

    private final Wiring wiring;
    private final StructureSettings settings;

    /** A point that somebody said the room of. */
    private record Place(Device device, Point point) {

        String name() {
            return device.id() + "/" + point.name();
        }

        int takes() {
            return Objects.requireNonNull(point.takes());
        }
    }

    Room(Wiring wiring, StructureSettings settings) {
        this.wiring = wiring;
        this.settings = settings;
    }

    List<ElectricalFinding> findings() {
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Place place : places()) {
            if (occupied(place.name()) > place.takes()) {
                findings.add(noRoom(place));
            }
        }
        for (Device device : wiring.loom().devices().values()) {
            if (device.kind() == DeviceKind.EARTH_POINT) {
                device.points().stream()
                        .map(point -> device.id() + "/" + point.name())
                        .filter(place -> wiring.wiresAt(place).size() > settings.mostRings())
                        .forEach(place -> findings.add(crowded(place)));
            }
        }
        return findings;
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Device device : wiring.loom().devices().values()) {
            for (Point point : device.points()) {
                if (point.takes() != null) {
                    places.add(new Place(device, point));
                }
            }
        }
        return places;
    }

    /** A piggyback terminal takes one place and offers it again, as long as something stands on it. */
    private int occupied(String place) {
        List<Wire> wires = wiring.wiresAt(place);
        long offered =
                wires.stream()
                        .map(wire -> wire.a().place().equals(place) ? wire.a() : wire.b())
                        .map(WireEnd::terminal)
                        .filter(terminal -> terminal.contains("piggyback"))
                        .count();
        return Math.max(Math.min(1, wires.size()), wires.size() - (int) offered);
    }

    private ElectricalFinding noRoom(Place place) {
        String added = newAt(place.name());
        String text =
                "No free screw or blade is left at %s: %d wire ends need a place there, %d find one%s."
                        .formatted(
                                place.name(),
                                occupied(place.name()),
                                place.takes(),
                                added.isEmpty() ? "; recorded so" : " (new: " + added + ")");
        return finding(
                "electrical.no-room",
                place.name(),
                added.isEmpty() ? Severity.NOTE : Severity.FAULT,
                text,
                occupied(place.name()),
                place.takes(),
                new Provenance(Status.FOUND, "said of the point"),
                added.isEmpty() ? "" : elsewhere(place));
    }

    private String elsewhere(Place full) {
        Optional<Supply> supply = wiring.tracing().supplyAt(full.name());
        boolean isEarth = wiring.tracing().isReturn(full.name());
        String free =
                places().stream()
                        .filter(place -> occupied(place.name()) < place.takes())
                        .filter(
                                place ->
                                        isEarth
                                                ? wiring.tracing().isReturn(place.name())
                                                : supply.isPresent()
                                                        && supply.equals(
                                                                wiring.tracing()
                                                                        .supplyAt(place.name())))
                        .sorted(nearest(full))
                        .limit(MOST_NAMED)
                        .map(
                                place ->
                                        "%s (%d free)"
                                                .formatted(
                                                        place.name(),
                                                        place.takes() - occupied(place.name())))
                        .collect(Collectors.joining(", "));
        String same =
                isEarth
                        ? "on earth"
                        : "on the same supply (%s)"
                                .formatted(supply.map(Supply::words).orElse("none"));
        return free.isEmpty()
                ? "No point %s is known to have room; add a joint or a piggyback terminal."
                        .formatted(same)
                : "There is room %s at %s.".formatted(same, free);
    }

    /** Points of the same device first, then those at the same place of the loom. */
    private static Comparator<Place> nearest(Place full) {
        return Comparator.comparing((Place place) -> !place.device().equals(full.device()))
                .thenComparing(place -> !place.point().node().equals(full.point().node()))
                .thenComparing(Place::name);
    }

    private ElectricalFinding crowded(String place) {
        String added = newAt(place);
        int rings = wiring.wiresAt(place).size();
        String text =
                "%d wire ends share earth point %s; more than %d rings under one screw seldom stay tight (%s)%s."
                        .formatted(
                                rings,
                                place,
                                settings.mostRings(),
                                settings.ringsSource().source(),
                                added.isEmpty() ? "; recorded so" : "; new: " + added);
        return finding(
                "electrical.earth-point-crowded",
                place,
                added.isEmpty() ? Severity.NOTE : Severity.WARNING,
                text,
                rings,
                settings.mostRings(),
                settings.ringsSource(),
                added.isEmpty() ? "" : "Add a second earth point beside it, on bright metal.");
    }

    private String newAt(String place) {
        return wiring.wiresAt(place).stream()
                .filter(wiring.newcomers()::isNew)
                .map(Wire::id)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private static ElectricalFinding finding(
            String code,
            String place,
            Severity severity,
            String text,
            int ends,
            int limit,
            @Nullable Provenance source,
            String remedy) {
        return new ElectricalFinding(
                new Finding(code, severity, Subject.of(ThingKind.POINT, place), text),
                "",
                new Figure(BigDecimal.valueOf(ends), "ends"),
                new Figure(BigDecimal.valueOf(limit), "ends"),
                source,
                remedy);
    }
}
