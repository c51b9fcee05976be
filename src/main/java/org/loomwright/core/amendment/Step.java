package org.loomwright.core.amendment;

import org.loomwright.core.amendment.Ledger.Absence;
import org.loomwright.core.amendment.Ledger.Place;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One amendment while it is being applied. Everything that speaks against it is collected first; only a sound step may change
 * the loom.
 */
final class Step {

    private final Amendment amendment;
    private final int index;
    private final WorkingLoom loom;
    private final Ledger ledger;
    private final List<Finding> reasons = new ArrayList<>();
    private final Set<Subject> claimed = new HashSet<>();

    Step(Amendment amendment, int index, WorkingLoom loom, Ledger ledger) {
        this.amendment = amendment;
        this.index = index;
        this.loom = loom;
        this.ledger = ledger;
    }

    Amendment amendment() {
        return amendment;
    }

    String id() {
        return amendment.id();
    }

    WorkingLoom loom() {
        return loom;
    }

    List<Finding> reasons() {
        return reasons;
    }

    boolean isSound() {
        return reasons.isEmpty();
    }

    /** Refuses the amendment; the clause completes "Amendment A1: ...". */
    void refuse(String code, String pointer, String clause) {
        reasons.add(
                Finding.fault(
                        "amendment." + code,
                        new Subject(ThingKind.AMENDMENT, id(), pointer(pointer)),
                        "Amendment %s: %s.".formatted(name(), clause)));
    }

    private String name() {
        return id().isBlank() ? "number " + (index + 1) : id();
    }

    void refuseUnless(boolean holds, String code, String pointer, String clause) {
        if (!holds) {
            refuse(code, pointer, clause);
        }
    }

    /** Refuses the amendment, because something that it needs is not there. */
    void refuseAbsent(Subject thing, String pointer, String need) {
        Absence absence = ledger.absence(thing, index);
        refuse(absence.code(), pointer, need + absence.clause());
    }

    void refuseUnchanged(String what) {
        refuse("changes-nothing", "", "it changes nothing: " + what);
    }

    /** An id names one thing for as long as the list of amendments lasts: it is not given again. */
    void claim(ThingKind kind, String newId, String pointer) {
        Subject thing = Subject.of(kind, newId);
        if (!claimed.add(thing)) {
            refuse("id-taken", pointer, "it makes %s twice".formatted(thing.words()));
        } else if (loom.has(thing)) {
            refuse("id-taken", pointer, "%s exists already".formatted(thing.words()));
        } else {
            ledger.findTakenOutBy(thing)
                    .ifPresent(
                            by ->
                                    refuse(
                                            "id-taken",
                                            pointer,
                                            "%s was taken out by amendment %s and its id is not given again"
                                                    .formatted(thing.words(), by)));
        }
    }

    Optional<Tracked<Wire>> needWire(String wire) {
        return need(loom.wire(wire), Subject.of(ThingKind.WIRE, wire), "/wire");
    }

    Optional<Tracked<Device>> needDevice(String device) {
        return need(loom.device(device), Subject.of(ThingKind.DEVICE, device), "/device");
    }

    Optional<Tracked<Opening>> needOpening(String opening) {
        return need(loom.opening(opening), Subject.of(ThingKind.OPENING, opening), "/opening");
    }

    /** A segment as recorded; the pieces that breakouts made of it have no life of their own here. */
    Optional<Whole> needWhole(String segment) {
        Optional<Whole> cutFrom = loom.wholeOfFarPiece(segment);
        cutFrom.ifPresent(whole -> refusePiece(segment, whole.recorded()));
        return cutFrom.isPresent()
                ? Optional.empty()
                : need(loom.whole(segment), Subject.of(ThingKind.SEGMENT, segment), "/segment");
    }

    private void refusePiece(String piece, Segment whole) {
        refuse(
                "segment-is-piece",
                "/segment",
                "segment %s is a piece that a breakout cut from segment %s; name segment %s and count along the whole of it"
                        .formatted(piece, whole.id(), whole.id()));
    }

    void needNode(String node, String pointer, String need) {
        Subject thing = Subject.of(ThingKind.NODE, node);
        if (!loom.has(thing)) {
            refuseAbsent(thing, pointer, need);
        }
    }

    /** The device and the point that a wire's end is to go to. */
    void needPoint(WireEnd end, String pointer, String need) {
        String goes = "%s is to go to %s, but ".formatted(need, end.place());
        Optional<Tracked<Device>> device = loom.device(end.device());
        if (device.isEmpty()) {
            refuseAbsent(Subject.of(ThingKind.DEVICE, end.device()), pointer, goes);
        } else if (device.get().now().points().stream()
                .noneMatch(point -> point.name().equals(end.point()))) {
            refuse(
                    "point-unknown",
                    pointer,
                    "%sdevice %s has no point %s".formatted(goes, end.device(), end.point()));
        }
    }

    private <T> Optional<T> need(Optional<T> part, Subject thing, String pointer) {
        if (part.isEmpty()) {
            refuseAbsent(thing, pointer, "");
        }
        return part;
    }

    /** Notes that the thing, or one aspect of it, is written at that place of this amendment. */
    void writes(ThingKind kind, String thing, String aspect, String pointer) {
        ledger.write(Subject.of(kind, thing), aspect, new Place(id(), pointer(pointer)));
    }

    /** Notes that this amendment took a thing out. */
    void takesOut(ThingKind kind, String thing, boolean stock) {
        ledger.takeOut(Subject.of(kind, thing), stock, id());
    }

    private String pointer(String within) {
        return "/amendments/" + index + within;
    }
}
