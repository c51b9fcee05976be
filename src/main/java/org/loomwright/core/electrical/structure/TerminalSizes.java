package org.loomwright.core.electrical.structure;

import org.loomwright.core.catalogue.TerminalType;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.CrossSection;

import java.util.ArrayList;
import java.util.List;

/** Terminals on conductors that are thicker or thinner than they usually take. */
final class TerminalSizes {

    private final Wiring wiring;

    TerminalSizes(Wiring wiring) {
        this.wiring = wiring;
    }

    List<ElectricalFinding> findings() {
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Wire wire : wiring.loom().wires().values()) {
            CrossSection metal = wiring.catalogue().getSize(wire.size()).metal();
            for (Side side : Side.values()) {
                TerminalType terminal = wiring.catalogue().getTerminal(wire.end(side).terminal());
                if (!terminal.takes(metal)) {
                    findings.add(finding(wire, side, terminal, metal));
                }
            }
        }
        return findings;
    }

    private ElectricalFinding finding(
            Wire wire, Side side, TerminalType terminal, CrossSection metal) {
        boolean isRecorded = isRecorded(wire, side);
        String text =
                "End %s of wire %s at %s has a %s, which usually takes %s (%s); %s has %s%s."
                        .formatted(
                                side,
                                wire.id(),
                                wire.end(side).place(),
                                terminal.name(),
                                bounds(terminal),
                                terminal.provenance().status().words(),
                                wire.size(),
                                metal,
                                isRecorded ? "; recorded so" : "");
        CrossSection most = terminal.mostConductor();
        Figure limit = most != null && most.compareTo(metal) < 0 ? figure(most) : null;
        return new ElectricalFinding(
                new Finding(
                        "electrical.terminal-size",
                        isRecorded ? Severity.NOTE : Severity.WARNING,
                        Subject.of(ThingKind.WIRE, wire.id()),
                        text),
                "",
                limit == null ? null : figure(metal),
                limit,
                terminal.provenance(),
                isRecorded ? "" : remedy(limit != null));
    }

    /** Whether the recorded loom has the same size of wire with the same terminal there. */
    private boolean isRecorded(Wire wire, Side side) {
        Wire before = wiring.newcomers().recorded().wires().get(wire.id());
        return before != null
                && !wiring.newcomers().isNew(wire)
                && before.size().equals(wire.size())
                && before.end(side).terminal().equals(wire.end(side).terminal());
    }

    private static String bounds(TerminalType terminal) {
        CrossSection least = terminal.leastConductor();
        CrossSection most = terminal.mostConductor();
        if (least == null) {
            return "at most " + most;
        }
        return most == null ? "at least " + least : "%s to %s".formatted(least, most);
    }

    private static Figure figure(CrossSection area) {
        return new Figure(area.toSquareMillimetres(), "mm²");
    }

    private static String remedy(boolean isTooThick) {
        return isTooThick
                ? "Choose a terminal for thicker wire; never cut strands away to make it fit."
                : "Choose a terminal for thinner wire; a crimp that is too large does not hold.";
    }
}
