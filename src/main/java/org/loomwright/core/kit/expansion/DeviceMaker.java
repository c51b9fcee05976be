package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.DevicePart;
import org.loomwright.core.kit.DevicePart.FusePart;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the devices that a recipe adds, with fuses as large as what they feed demands. */
final class DeviceMaker {

    private final Draft draft;

    DeviceMaker(Draft draft) {
        this.draft = draft;
    }

    /** Notes what every wanted device draws, before any of them has a place. */
    void weigh() {
        for (DevicePart part : wanted()) {
            draft.loads.put(
                    part.key(), part.load() == null ? Current.ZERO : draft.current(part.load()));
        }
    }

    private List<DevicePart> wanted() {
        return draft.recipe.devices().stream()
                .filter(part -> part.when().holds(draft.facts))
                .toList();
    }

    void make() {
        for (DevicePart part : wanted()) {
            if (isWanted(part)) {
                make(part);
            }
        }
    }

    /** A fuse that is a feed's own is not wanted where the feed is fused already. */
    private boolean isWanted(DevicePart part) {
        return draft.recipe.feeds().stream()
                .filter(feed -> part.key().equals(feed.fuse()))
                .allMatch(
                        feed ->
                                Optional.ofNullable(draft.feeds.get(feed.key()))
                                        .filter(choice -> choice.option().ownFuse())
                                        .isPresent());
    }

    private void make(DevicePart part) {
        String id = draft.ids.like(part.id());
        List<FittedFuse> fuses = new ArrayList<>();
        for (FusePart fuse : part.fuses()) {
            FuseRating rating = rating(part, fuse);
            if (rating == null) {
                return;
            }
            fuses.add(new FittedFuse(fuse.from(), fuse.to(), rating.style(), rating.marked()));
            tellFuse(id, fuse, rating);
        }
        Device device = device(part, id, fuses);
        draft.made.put(part.key(), device);
        draft.amendments.add(
                new Amendment.AddDevice(draft.ids.next("A"), draft.recipe.name() + ".", device));
    }

    private Device device(DevicePart part, String id, List<FittedFuse> fuses) {
        Current load = part.load() == null ? null : draft.current(part.load());
        String name = draft.filled(part.name());
        if (fuses.size() == 1) {
            name = name.replace("{fuse}", plain(fuses.getFirst().marked()));
        }
        List<Point> points =
                part.points().stream()
                        .filter(it -> it.when().holds(draft.facts))
                        .map(it -> new Point(it.name(), draft.node(it.at()), it.tail(), it.takes()))
                        .toList();
        String serves = part.serves() == null ? null : draft.filled(part.serves());
        Current rating = part.rating() == null ? null : draft.current(part.rating());
        Particulars particulars = new Particulars(serves, rating, null, earth(part), fuses);
        return new Device(id, name, part.kind(), load, particulars, points);
    }

    private @Nullable EarthPolarity earth(DevicePart part) {
        String said = part.needsEarth();
        if (said == null) {
            return null;
        }
        return switch (draft.facts.getOrDefault(said, said)) {
            case "positive" -> EarthPolarity.POSITIVE;
            case "negative" -> EarthPolarity.NEGATIVE;
            default -> null;
        };
    }

    private static String plain(Current current) {
        return current.toAmperes().stripTrailingZeros().toPlainString();
    }

    private @Nullable FuseRating rating(DevicePart part, FusePart fuse) {
        Current load = draft.load(fuse.feeds());
        Current least = draft.bench.fuseFor(load);
        Optional<FuseRating> rating =
                draft.bench.tables().fuses().stream()
                        .filter(it -> it.style() == FuseStyle.BLADE)
                        .filter(it -> it.continuous().compareTo(least) >= 0)
                        .filter(it -> it.continuous().compareTo(fuse.least()) >= 0)
                        .findFirst();
        if (rating.isEmpty()) {
            draft.refuse(
                    "no-fuse",
                    "No fuse of the table is large enough for %s through %s."
                            .formatted(load, part.key()));
        }
        return rating.orElse(null);
    }

    private void tellFuse(String id, FusePart fuse, FuseRating rating) {
        draft.note(
                ThingKind.DEVICE,
                id,
                "fuse",
                "A %s fuse of %s for %s: its loads take at most %s of it, and none below %s is fitted."
                        .formatted(
                                rating.style().words(),
                                rating.marked(),
                                draft.load(fuse.feeds()),
                                draft.bench.rules().fuseLoad().value(),
                                fuse.least()),
                rating.provenance());
    }
}
