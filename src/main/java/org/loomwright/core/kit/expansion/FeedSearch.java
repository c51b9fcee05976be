package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.FuseMarking;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.FeedPart;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds a point of the loom for a feed: the wanted supply, room for one more wire end, nothing on the way that would carry too much, and
 * of those the nearest. A point of which nobody said how many ends it takes comes after those of which somebody did.
 */
final class FeedSearch {

    /** Where wires usually branch. */
    private static final Set<DeviceKind> USUAL =
            Set.of(
                    DeviceKind.FUSE_BOX,
                    DeviceKind.FUSE,
                    DeviceKind.JOINT,
                    DeviceKind.CONNECTOR,
                    DeviceKind.CONTROL_BOX,
                    DeviceKind.RELAY,
                    DeviceKind.STARTER,
                    DeviceKind.AMMETER);

    /** Whose contacts a feed may come through: others would switch it off. */
    private static final Set<String> MAIN_SWITCHES = Set.of("ignition", "lighting");

    private static final int MOST_REASONS = 6;

    private final Draft draft;
    private final FeedLine line;
    private final Map<String, String> reasons = new LinkedHashMap<>();

    private record Candidate(FeedChoice choice, Length distance) {

        boolean hasKnownRoom() {
            return choice.at().point().takes() != null;
        }
    }

    FeedSearch(Draft draft) {
        this.draft = draft;
        this.line = new FeedLine(draft);
    }

    void find(FeedPart part) {
        Addition added = Addition.of(draft, part);
        for (FeedPart.Option option : part.options()) {
            Optional<Candidate> best =
                    option.when().holds(draft.facts) ? best(part, option, added) : Optional.empty();
            if (best.isPresent()) {
                take(part, best.get(), added);
                return;
            }
        }
        draft.refuse("no-feed", nothingFound(part, added));
    }

    private String nothingFound(FeedPart part, Addition added) {
        String wanted =
                String.join(
                        " or ",
                        part.options().stream()
                                .filter(option -> option.when().holds(draft.facts))
                                .map(option -> option.supply().words())
                                .distinct()
                                .toList());
        String why =
                reasons.isEmpty()
                        ? "No point of the loom is fed so."
                        : "Looked at: "
                                + String.join(
                                        "; ",
                                        reasons.entrySet().stream()
                                                .limit(MOST_REASONS)
                                                .map(it -> it.getKey() + " " + it.getValue())
                                                .toList())
                                + ".";
        return "There is no feed for %s: looked for %s with room for one more wire and %s. %s"
                .formatted(part.text(), wanted, added.all(), why);
    }

    private Optional<Candidate> best(FeedPart part, FeedPart.Option option, Addition added) {
        List<Candidate> candidates = new ArrayList<>();
        for (Device device : draft.loom.devices().values()) {
            boolean fits =
                    option.on().isEmpty() ? isUsual(device) : option.on().contains(device.kind());
            if (fits) {
                device.points()
                        .forEach(
                                point ->
                                        candidate(part, option, new Place(device, point), added)
                                                .ifPresent(candidates::add));
            }
        }
        return candidates.stream()
                .min(
                        Comparator.comparing((Candidate it) -> !it.hasKnownRoom())
                                .thenComparing(it -> it.choice().renew().size())
                                .thenComparing(Candidate::distance)
                                .thenComparing(it -> it.choice().at().id()));
    }

    /** Of switches those alone that decide what is fed behind them: others are too small, and easily changed for another. */
    private boolean isUsual(Device device) {
        return device.kind() == DeviceKind.SWITCH
                ? isMainSwitch(device.id())
                : USUAL.contains(device.kind());
    }

    private boolean isMainSwitch(String device) {
        return service(device).filter(MAIN_SWITCHES::contains).isPresent();
    }

    private Optional<String> service(String device) {
        return Tracing.serviceOf(draft.loom.getDevice(device), draft.bench.catalogue())
                .map(Service::code);
    }

    private Optional<Candidate> candidate(
            FeedPart part, FeedPart.Option option, Place place, Addition added) {
        Supply supply = draft.tracing.supplyAt(place.id()).orElse(Supply.NONE);
        List<Passed> path = draft.tracing.pathTo(place.id()).orElse(List.of());
        if (supply != option.supply() || !comesStraight(path, option)) {
            return Optional.empty();
        }
        Integer takes = place.point().takes();
        int ends = draft.ends(place.id());
        if (takes != null && ends >= takes) {
            reasons.putIfAbsent(place.id(), "has %d of %d places taken".formatted(ends, takes));
            return Optional.empty();
        }
        List<Wire> wires = line.to(place.id());
        List<Wire> over = wires.stream().filter(wire -> isOver(wire, added)).toList();
        String tooMuch = overloaded(path, added);
        if (tooMuch == null && !over.isEmpty() && !option.renew()) {
            tooMuch = over(over.getFirst(), added);
        }
        if (tooMuch != null) {
            reasons.putIfAbsent(place.id(), tooMuch);
            return Optional.empty();
        }
        Length distance =
                draft.routes
                        .distance(place.point().node(), draft.node(part.towards()))
                        .plus(place.point().tail());
        return Optional.of(
                new Candidate(
                        new FeedChoice(part, option, place, wires, over, fuse(path)), distance));
    }

    private boolean comesStraight(List<Passed> path, FeedPart.Option option) {
        return path.stream()
                .allMatch(
                        passed ->
                                switch (passed.element()) {
                                    case SOURCE, GENERATOR, CUT_OUT, LINK, FUSE, EARTH, NONE ->
                                            true;
                                    case CONTACT -> isAllowed(passed.device(), option);
                                    case COIL, SENSE, MAKE, BREAK, FIELD, ENGINE_OFF, LOAD -> false;
                                });
    }

    private boolean isAllowed(String device, FeedPart.Option option) {
        return isMainSwitch(device)
                || service(device).filter(option.through()::contains).isPresent();
    }

    private boolean isOver(Wire wire, Addition added) {
        return added.exceeds(
                draft.currents.in(wire.id()),
                draft.tracing.get(wire.id()).loads(),
                draft.bench.catalogue().getSize(wire.size()).rating());
    }

    private String over(Wire wire, Addition added) {
        return "would load wire %s (%s, %s) with %s"
                .formatted(
                        wire.id(),
                        wire.size(),
                        draft.bench.catalogue().getSize(wire.size()).rating(),
                        added.in(wire.id()));
    }

    /** Which fuse or contact on the way would carry too much, or is not known. */
    private @Nullable String overloaded(List<Passed> path, Addition added) {
        for (Passed passed : path) {
            Current limit = limit(passed);
            if (limit == null && passed.element() == Element.FUSE) {
                return "hangs on a fuse of %s that nobody recorded".formatted(passed.device());
            }
            Set<String> behind = line.behind(passed);
            Current already = draft.currents.through(passed, behind);
            if (limit != null && added.exceeds(already, behind, limit)) {
                return "would load %s with %s, of which it may have %s"
                        .formatted(passed.device(), already.plus(added.beside(behind)), limit);
            }
        }
        return null;
    }

    private @Nullable Current limit(Passed passed) {
        Device device = draft.loom.getDevice(passed.device());
        if (passed.element() != Element.FUSE) {
            return passed.element() == Element.CONTACT ? device.particulars().rating() : null;
        }
        Current continuous = continuous(passed);
        return continuous == null
                ? null
                : Current.roundedFromAmperes(
                        continuous.toDoubleAmperes()
                                * draft.bench.rules().fuseLoad().value().toDouble());
    }

    private @Nullable Current continuous(Passed passed) {
        Device device = draft.loom.getDevice(passed.device());
        return device.particulars().fuses().stream()
                .filter(fuse -> isBetween(fuse, passed))
                .map(fuse -> FuseMarking.read(draft.bench.tables(), fuse.style(), fuse.marked()))
                .map(FuseRating::continuous)
                .findFirst()
                .orElse(null);
    }

    private static boolean isBetween(FittedFuse fuse, Passed passed) {
        return Set.of(fuse.from(), fuse.to()).equals(Set.of(passed.from(), passed.to()));
    }

    private @Nullable Current fuse(List<Passed> path) {
        return path.reversed().stream()
                .filter(passed -> passed.element() == Element.FUSE)
                .findFirst()
                .map(this::continuous)
                .orElse(null);
    }

    /** Puts larger wires in the place of those that would carry too much. */
    private void renew(FeedChoice choice, Addition added) {
        for (Wire wire : choice.renew()) {
            Current current = added.in(wire.id());
            Optional<ConductorSize> size = new Sizing(draft).smallestFor(current);
            if (size.isEmpty()) {
                draft.refuse("no-size", over(wire, added) + ", which no size of the table bears");
                return;
            }
            draft.renewed.put(wire.id(), size.get().designation());
            draft.amendments.add(
                    new Amendment.ReplaceWire(
                            draft.ids.next("A"),
                            "With %s more it would carry %s.".formatted(added.all(), current),
                            wire.id(),
                            wire.colour(),
                            size.get().designation()));
            draft.note(
                    ThingKind.WIRE,
                    wire.id(),
                    "renewed",
                    "The kit %s; it is renewed in %s, which carries %s."
                            .formatted(
                                    over(wire, added),
                                    size.get().designation(),
                                    size.get().rating()),
                    size.get().ratingProvenance());
        }
    }

    private void take(FeedPart part, Candidate best, Addition added) {
        FeedChoice choice = best.choice();
        draft.feeds.put(part.key(), choice);
        Place at = choice.at();
        renew(choice, added);
        draft.reserve(at);
        draft.note(
                ThingKind.POINT,
                at.id(),
                "feed",
                "The feed for %s is taken from %s (%s): %s, %s away, takes %s more."
                        .formatted(
                                part.text(),
                                at.id(),
                                at.device().name(),
                                choice.option().supply().words(),
                                best.distance(),
                                added.all()),
                Draft.RULE);
        if (at.point().takes() == null) {
            draft.note(
                    ThingKind.POINT,
                    at.id(),
                    "room",
                    "Nobody said how many wire ends %s takes; %d will be on it. Look before ordering."
                            .formatted(at.id(), draft.ends(at.id())),
                    Draft.RULE);
        }
    }
}
