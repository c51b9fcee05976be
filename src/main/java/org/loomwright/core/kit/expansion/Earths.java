package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Length;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds an earth point near a place, or makes one beside it. */
final class Earths {

    private static final Length TAIL = Length.ofMillimetres(100);

    private final Draft draft;

    Earths(Draft draft) {
        this.draft = draft;
    }

    Place near(Place place) {
        Optional<Place> nearest =
                draft.loom.devices().values().stream()
                        .filter(device -> device.kind() == DeviceKind.EARTH_POINT)
                        .map(device -> new Place(device, device.points().getFirst()))
                        .filter(this::hasRoom)
                        .filter(it -> !isFar(it, place))
                        .min(
                                Comparator.comparing((Place it) -> distance(it, place))
                                        .thenComparing(Place::id));
        return nearest.orElseGet(() -> made(place));
    }

    private boolean hasRoom(Place earth) {
        Integer takes = earth.point().takes();
        int most = takes == null ? draft.bench.settings().mostOnEarth() : takes;
        return draft.ends(earth.id()) < most;
    }

    private boolean isFar(Place earth, Place place) {
        return distance(earth, place).isLongerThan(draft.bench.settings().farthestEarth());
    }

    private Length distance(Place earth, Place place) {
        return draft.routes
                .distance(earth.point().node(), place.point().node())
                .plus(earth.point().tail());
    }

    /** An earth point that the kit made at the same node before, while it has room, or a new one. */
    private Place made(Place place) {
        String node = place.point().node();
        return draft.made.values().stream()
                .filter(device -> device.kind() == DeviceKind.EARTH_POINT)
                .map(device -> new Place(device, device.points().getFirst()))
                .filter(earth -> earth.point().node().equals(node) && hasRoom(earth))
                .findFirst()
                .orElseGet(() -> added(place));
    }

    private Place added(Place place) {
        String node = place.point().node();
        Point point = new Point("STUD", node, TAIL, draft.bench.settings().mostOnEarth());
        Device earth =
                new Device(
                        draft.ids.like(draft.recipe.prefix() + "-EARTH"),
                        "earth screw for " + draft.recipe.circuit(),
                        DeviceKind.EARTH_POINT,
                        null,
                        Particulars.NONE,
                        List.of(point));
        draft.made.put(earth.id(), earth);
        draft.amendments.add(
                new Amendment.AddDevice(draft.ids.next("A"), draft.recipe.name() + ".", earth));
        draft.note(
                ThingKind.DEVICE,
                earth.id(),
                "earth",
                "A new earth screw at node %s: no recorded earth point with room is within %s. Bare metal, a biting washer, wax afterwards."
                        .formatted(node, draft.bench.settings().farthestEarth()),
                Draft.RULE);
        return new Place(earth, point);
    }
}
