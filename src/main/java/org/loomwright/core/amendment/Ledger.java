package org.loomwright.core.amendment;

import org.loomwright.core.amendment.AmendedLoom.TakenOut;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Segment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the amendments did, failed to do and will do to which thing: the answer to "why is it not there?" and to "which
 * amendment wrote this?". Things are named by subjects without a place.
 */
final class Ledger {

    /** A place in the list of amendments where something about a thing is written. */
    record Place(String amendment, String pointer) {}

    /** Why a thing is not there. */
    record Absence(String code, String clause) {}

    private final Map<Subject, String> takenOut = new HashMap<>();
    private final Map<Subject, String> refused = new HashMap<>();
    private final Map<Subject, Integer> lastMaker = new HashMap<>();
    private final Map<Subject, Map<String, Place>> places = new HashMap<>();
    private final List<TakenOut> stockTakenOut = new ArrayList<>();
    private final List<Amendment> amendments;

    Ledger(List<Amendment> amendments) {
        this.amendments = amendments;
        for (int i = 0; i < amendments.size(); i++) {
            for (Subject thing : madeBy(amendments.get(i))) {
                lastMaker.put(thing, i);
            }
        }
    }

    /** The things that an amendment makes, if it is not refused. */
    private static List<Subject> madeBy(Amendment amendment) {
        return switch (amendment) {
            case Amendment.AddWire a -> List.of(Subject.of(ThingKind.WIRE, a.wire().id()));
            case Amendment.BreakOutBranch a ->
                    branch(
                            a.branch(),
                            Subject.of(ThingKind.NODE, a.breakout().id()),
                            Subject.of(ThingKind.SEGMENT, a.farSegment()),
                            Subject.of(ThingKind.NODE, a.end().id()));
            case Amendment.ExtendBranch a ->
                    branch(a.branch(), Subject.of(ThingKind.NODE, a.end().id()));
            case Amendment.AddDevice a -> List.of(Subject.of(ThingKind.DEVICE, a.device().id()));
            case Amendment.AddOpening a -> List.of(Subject.of(ThingKind.OPENING, a.opening().id()));
            case Amendment.RemoveWire a -> List.of();
            case Amendment.ReplaceWire a -> List.of();
            case Amendment.MoveWireEnd a -> List.of();
            case Amendment.ChangeTerminal a -> List.of();
            case Amendment.ChangeLength a -> List.of();
            case Amendment.RemoveBranch a -> List.of();
            case Amendment.RemoveDevice a -> List.of();
            case Amendment.ChangeDevice a -> List.of();
            case Amendment.ChangeVehicle a -> List.of();
            case Amendment.ChangeCovering a -> List.of();
            case Amendment.RemoveOpening a -> List.of();
        };
    }

    private static List<Subject> branch(Segment branch, Subject... others) {
        List<Subject> things = new ArrayList<>(List.of(others));
        things.add(Subject.of(ThingKind.SEGMENT, branch.id()));
        branch.openings()
                .forEach(opening -> things.add(Subject.of(ThingKind.OPENING, opening.id())));
        return things;
    }

    void refuse(Amendment amendment) {
        madeBy(amendment).forEach(thing -> refused.putIfAbsent(thing, amendment.id()));
    }

    void takeOut(Subject thing, boolean stock, String by) {
        takenOut.put(thing, by);
        if (stock) {
            stockTakenOut.add(new TakenOut(thing, by));
        }
    }

    List<TakenOut> stockTakenOut() {
        return stockTakenOut;
    }

    Optional<String> findTakenOutBy(Subject thing) {
        return Optional.ofNullable(takenOut.get(thing));
    }

    /** Why a thing is not there when the amendment at that index is applied. */
    Absence absence(Subject thing, int index) {
        String words = thing.words();
        if (takenOut.containsKey(thing)) {
            return new Absence(
                    "taken-out",
                    "%s was taken out by amendment %s".formatted(words, takenOut.get(thing)));
        }
        if (refused.containsKey(thing)) {
            return new Absence(
                    "depends-on-refused",
                    "%s depends on amendment %s, which was refused"
                            .formatted(words, refused.get(thing)));
        }
        int maker = lastMaker.getOrDefault(thing, -1);
        if (maker > index) {
            return new Absence(
                    "made-later",
                    "%s is made only by amendment %s, which comes later"
                            .formatted(words, amendments.get(maker).id()));
        }
        return new Absence(thing.kind().words() + "-unknown", "%s does not exist".formatted(words));
    }

    void write(Subject thing, String aspect, Place place) {
        places.computeIfAbsent(thing, key -> new HashMap<>()).put(aspect, place);
    }

    /** Where that aspect of the thing was last written, or else where the thing itself was. */
    Optional<Place> findPlace(Subject thing, String aspect) {
        Map<String, Place> known = places.getOrDefault(thing, Map.of());
        return Optional.ofNullable(known.getOrDefault(aspect, known.get("")));
    }
}
