package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.electrical.FuseMarking;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.quantity.Current;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What protects and feeds the kit's own wires: walks back over them to a fuse, a feed or the loom. */
final class Protection {

    private final Draft draft;
    private final List<Job> jobs;

    Protection(Draft draft, List<Job> jobs) {
        this.draft = draft;
        this.jobs = jobs;
    }

    /** What the fuse of a new device carries, nothing where it has none there. */
    Current size(Device device, String to) {
        return fitted(device, to).map(this::continuous).orElse(Current.ZERO);
    }

    private static Optional<FittedFuse> fitted(Device device, String to) {
        return device.particulars().fuses().stream().filter(it -> it.to().equals(to)).findFirst();
    }

    private Current continuous(FittedFuse fuse) {
        FuseRating rating = FuseMarking.read(draft.bench.tables(), fuse.style(), fuse.marked());
        return rating.continuous();
    }

    /** What the last fuse before a job carries, or null where there is none. */
    @Nullable Current fuseBefore(Job job) {
        return fuseAt(job.from, new HashSet<>());
    }

    private @Nullable Current fuseAt(Place place, Set<String> seen) {
        if (!seen.add(place.id())) {
            return null;
        }
        Optional<FittedFuse> own =
                isMade(place) ? fitted(place.device(), place.point().name()) : Optional.empty();
        if (own.isPresent()) {
            return continuous(own.get());
        }
        Optional<FeedChoice> feed = feedAt(place);
        if (feed.isPresent()) {
            return feed.get().fuse();
        }
        return before(place).map(job -> fuseAt(job.from, seen)).orElse(null);
    }

    private Optional<FeedChoice> feedAt(Place place) {
        return draft.feeds.values().stream()
                .filter(feed -> feed.at().id().equals(place.id()))
                .findFirst();
    }

    private boolean isMade(Place place) {
        return draft.made.containsValue(place.device());
    }

    /** The job that feeds that place, through the device where need be. */
    private Optional<Job> before(Place place) {
        String wanted = entrance(place);
        return jobs.stream()
                .filter(job -> job.to.device().id().equals(place.device().id()))
                .filter(job -> wanted.isEmpty() || job.to.point().name().equals(wanted))
                .findFirst();
    }

    /** By which point a current comes in that leaves at this one; empty for any other point. */
    private static String entrance(Place place) {
        String point = place.point().name();
        if (place.device().kind() == DeviceKind.RELAY) {
            return switch (point) {
                case "87", "87a" -> "30";
                case "85" -> "86";
                default -> point;
            };
        }
        return "";
    }

    /** What the kit's wires that begin at a place hang on. */
    Supply supplyAt(Place place) {
        return supplyAt(place, new HashSet<>());
    }

    private Supply supplyAt(Place place, Set<String> seen) {
        if (!seen.add(place.id())) {
            return Supply.NONE;
        }
        Optional<FeedChoice> feed = feedAt(place);
        if (feed.isPresent()) {
            return feed.get().option().supply();
        }
        boolean fuse = isMade(place) && fitted(place.device(), place.point().name()).isPresent();
        Supply before =
                before(place)
                        .map(job -> supplyAt(job.from, seen))
                        .orElseGet(() -> draft.tracing.supplyAt(place.id()).orElse(Supply.NONE));
        return fuse ? FeedChoice.fused(before) : before;
    }
}
