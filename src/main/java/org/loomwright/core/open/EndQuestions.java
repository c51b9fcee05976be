package org.loomwright.core.open;

import org.loomwright.core.amendment.AmendedLoom.TakenOut;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Is everything said of the ends: is there room on the points that feed additions, and when are terminals fitted? */
final class EndQuestions {

    /** Nothing is fitted to a bare end, so there is nothing to fit before or after. */
    private static final String BARE_END = "screw-end";

    private final Inquiry inquiry;
    private final Set<String> uncovered = new HashSet<>();

    EndQuestions(Inquiry inquiry) {
        this.inquiry = inquiry;
        noteUncovered();
    }

    void ask() {
        feedingEnds().values().forEach(this::askForRoom);
        endsByNode().forEach(this::askForFitting);
    }

    /** The segments whose covering comes off, or is made new, because a wire in them is added, changed or taken out. */
    private void noteUncovered() {
        Routes routes = new Routes(inquiry.loom());
        inquiry.loom().wires().values().stream()
                .filter(wire -> inquiry.isNew(ThingKind.WIRE, wire.id()))
                .flatMap(wire -> routes.of(wire).stream())
                .forEach(segment -> uncovered.add(segment.id()));
        Set<String> emptied = segmentsOfTakenOutWires();
        inquiry.amended()
                .recordedSegments(inquiry.stock())
                .forEach(
                        (segment, recorded) -> {
                            if (emptied.contains(recorded)) {
                                uncovered.add(segment);
                            }
                        });
    }

    private Set<String> segmentsOfTakenOutWires() {
        Routes routes = new Routes(inquiry.stock());
        Set<String> segments = new HashSet<>();
        for (TakenOut gone : inquiry.amended().takenOut()) {
            Wire wire = inquiry.stock().wires().get(gone.thing().id());
            if (gone.thing().kind() == ThingKind.WIRE && wire != null) {
                routes.of(wire).forEach(segment -> segments.add(segment.id()));
            }
        }
        return segments;
    }

    /** Points of recorded devices from which an added wire, or one that was moved there, takes its feed. */
    private Map<String, WireEnd> feedingEnds() {
        Map<String, WireEnd> places = new TreeMap<>();
        for (WireTrace trace : inquiry.tracing().all()) {
            Side source = trace.source();
            if (trace.role() == Role.LIVE && source != null) {
                WireEnd end = inquiry.loom().getWire(trace.wire()).end(source);
                if (isMoved(trace.wire(), source, end)
                        && !inquiry.isNew(ThingKind.DEVICE, end.device())) {
                    places.put(end.place(), end);
                }
            }
        }
        return places;
    }

    private boolean isMoved(String wire, Side side, WireEnd end) {
        Wire before = inquiry.stock().wires().get(wire);
        return before == null || !before.end(side).isOnSamePointAs(end);
    }

    private void askForRoom(WireEnd end) {
        String place = end.place();
        int ends = inquiry.endsAt(place).size();
        inquiry.ask(
                OpenRule.ROOM,
                Subject.of(ThingKind.POINT, place),
                inquiry.loom().getPoint(end).takes() != null,
                "An addition takes its feed from %s, where %d wire ends then meet, and nobody said how many find room."
                        .formatted(place, ends),
                "How many wire ends find room at %s?".formatted(place));
    }

    /** The ends on legs that are covered anew, by the node that their leg leads to. */
    private Map<String, List<WireEnd>> endsByNode() {
        Map<String, List<WireEnd>> ends = new TreeMap<>();
        for (Wire wire : inquiry.loom().wires().values()) {
            for (WireEnd end : List.of(wire.a(), wire.b())) {
                String node = inquiry.loom().getPoint(end).node();
                if (!end.terminal().equals(BARE_END) && isUncovered(node)) {
                    ends.computeIfAbsent(node, id -> new ArrayList<>()).add(end);
                }
            }
        }
        return ends;
    }

    /** Whether the leg to the node is covered, and anew. */
    private boolean isUncovered(String node) {
        List<Segment> legs =
                inquiry.loom()
                        .findArriving(node)
                        .map(List::of)
                        .orElseGet(() -> inquiry.loom().leaving(node));
        return legs.stream()
                .filter(leg -> uncovered.contains(leg.id()))
                .map(leg -> inquiry.catalogue().getCovering(leg.finish().covering()))
                .anyMatch(covering -> covering.wall().isPositive());
    }

    private void askForFitting(String node, List<WireEnd> ends) {
        String unsaid =
                ends.stream()
                        .filter(end -> end.fitted() == null)
                        .map(end -> "%s (%s)".formatted(end.place(), end.terminal()))
                        .distinct()
                        .sorted()
                        .collect(Collectors.joining(", "));
        String called = "%s (%s)".formatted(node, inquiry.loom().getNode(node).name());
        inquiry.ask(
                OpenRule.FITTED,
                Subject.of(ThingKind.NODE, node),
                unsaid.isEmpty(),
                "The leg to %s is covered, and nobody said whether these terminals are fitted before or after that: %s."
                        .formatted(called, unsaid),
                "Which terminals at %s are fitted before covering, which after it, and where may the workshop choose?"
                        .formatted(node));
    }
}
