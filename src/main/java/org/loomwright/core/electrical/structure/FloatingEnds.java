package org.loomwright.core.electrical.structure;

import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.ArrayList;
import java.util.List;

/** Wires that end on a point from which nothing goes on. */
final class FloatingEnds {

    private final Wiring wiring;

    FloatingEnds(Wiring wiring) {
        this.wiring = wiring;
    }

    List<ElectricalFinding> findings() {
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Wire wire : wiring.loom().wires().values()) {
            for (WireEnd end : List.of(wire.a(), wire.b())) {
                if (floats(end)) {
                    findings.add(finding(wire, end));
                }
            }
        }
        return findings;
    }

    /** A point that the table of devices mentions leads somewhere, if only into the other loom. */
    private boolean floats(WireEnd end) {
        Device device = wiring.loom().getDevice(end.device());
        boolean leadsOn =
                !wiring.elementsAt(end.place()).isEmpty()
                        || !wiring.behaviours().unknownPoints(device).contains(end.point());
        return !leadsOn && wiring.wiresAt(end.place()).size() == 1;
    }

    private ElectricalFinding finding(Wire wire, WireEnd end) {
        boolean added = wiring.newcomers().isNew(wire);
        boolean live = wiring.tracing().supplyAt(end.place()).isPresent();
        return ElectricalFinding.of(
                new Finding(
                        "electrical.floating-end",
                        added ? Severity.WARNING : Severity.NOTE,
                        Subject.of(ThingKind.WIRE, wire.id()),
                        "Wire %s ends at %s, where nothing else is joined and the device does nothing%s%s."
                                .formatted(
                                        wire.id(),
                                        end.place(),
                                        live ? "; the end is live" : "",
                                        added ? "" : "; recorded so")),
                live
                        ? "Join it to something, or insulate the end and tie it back."
                        : "Join it to something, or leave the wire out.");
    }
}
