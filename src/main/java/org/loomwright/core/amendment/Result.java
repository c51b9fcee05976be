package org.loomwright.core.amendment;

import org.loomwright.core.amendment.AmendedLoom.Piece;
import org.loomwright.core.amendment.Whole.Part;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Segment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Writes the amended loom down once all amendments are applied: its document, and where each part comes from. */
final class Result {

    private final WorkingLoom working;
    private final Ledger ledger;
    private final List<Segment> segments = new ArrayList<>();
    private final Map<Subject, Origin> origins = new HashMap<>();
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, String> voided = new LinkedHashMap<>();

    Result(WorkingLoom working, Ledger ledger) {
        this.working = working;
        this.ledger = ledger;
        note(ThingKind.VEHICLE, "", working.vehicle().origin());
        working.wholes().forEach(this::writeSegment);
        working.nodes().forEach((id, node) -> note(ThingKind.NODE, id, node.origin()));
        working.wires().forEach((id, wire) -> note(ThingKind.WIRE, id, wire.origin()));
        working.devices().values().forEach(this::noteDevice);
        voidChecks();
    }

    private void writeSegment(Whole whole) {
        for (Part part : whole.parts()) {
            Segment segment = part.segment();
            segments.add(segment);
            note(ThingKind.SEGMENT, segment.id(), part.origin());
            if (!segment.equals(whole.recorded())) {
                pieces.put(segment.id(), part.piece());
            }
        }
        whole.openings().forEach((id, opening) -> note(ThingKind.OPENING, id, opening.origin()));
    }

    private void noteDevice(Tracked<Device> device) {
        String id = device.now().id();
        note(ThingKind.DEVICE, id, device.origin());
        Origin unchanged = Tracked.originOf(device.madeBy(), List.of());
        device.now()
                .points()
                .forEach(point -> note(ThingKind.POINT, id + "/" + point.name(), unchanged));
    }

    private void note(ThingKind kind, String id, Origin origin) {
        if (!origin.equals(Origin.STOCK)) {
            origins.put(Subject.of(kind, id), origin);
        }
    }

    /** A check whose end is gone, or with a changed length between its ends, no longer speaks. */
    private void voidChecks() {
        Map<String, Whole> arriving = new HashMap<>();
        working.wholes().forEach(whole -> arriving.put(whole.recorded().to(), whole));
        boolean lengthsChanged =
                working.wholes().stream().anyMatch(whole -> !whole.length().changes().isEmpty());
        for (EndToEnd check : working.stock().checks()) {
            voidIfEndIsGone(check, check.from());
            voidIfEndIsGone(check, check.to());
            if (lengthsChanged && !voided.containsKey(check.id())) {
                voidIfLengthChanged(check, arriving);
            }
        }
    }

    private void voidIfEndIsGone(EndToEnd check, String node) {
        ledger.findTakenOutBy(Subject.of(ThingKind.NODE, node))
                .ifPresent(amendment -> voided.putIfAbsent(check.id(), amendment));
    }

    /**
     * The segments between two nodes are those that lead from the datum to one of them but not to both. Breakouts change
     * nothing about that, so the wholes are enough.
     */
    private void voidIfLengthChanged(EndToEnd check, Map<String, Whole> arriving) {
        Map<String, Whole> between = new LinkedHashMap<>(fromDatum(check.from(), arriving));
        fromDatum(check.to(), arriving)
                .forEach(
                        (id, whole) -> {
                            if (between.remove(id) == null) {
                                between.put(id, whole);
                            }
                        });
        between.values().stream()
                .flatMap(whole -> whole.length().changes().stream())
                .findFirst()
                .ifPresent(amendment -> voided.put(check.id(), amendment));
    }

    private static Map<String, Whole> fromDatum(String node, Map<String, Whole> arriving) {
        Map<String, Whole> path = new LinkedHashMap<>();
        Whole whole = arriving.get(node);
        while (whole != null) {
            path.put(whole.recorded().id(), whole);
            whole = arriving.get(whole.recorded().from());
        }
        return path;
    }

    LoomDocument document() {
        LoomDocument stock = working.stock();
        Predicate<EndToEnd> speaks = check -> !voided.containsKey(check.id());
        return new LoomDocument(
                stock.name(),
                working.vehicle().now(),
                stock.datum(),
                working.nodes().values().stream().map(Tracked::now).toList(),
                segments,
                working.devices().values().stream().map(Tracked::now).toList(),
                working.wires().values().stream().map(Tracked::now).toList(),
                stock.checks().stream().filter(speaks).toList(),
                stock.customColours());
    }

    AmendedLoom amended(Loom proven) {
        return new AmendedLoom(proven, origins, pieces, ledger.stockTakenOut(), voided);
    }
}
