package org.loomwright.document.sheet.content;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Which amendments stand behind a change to a wire. */
final class Reasons {

    private final List<Amendment> amendments;

    Reasons(List<Amendment> amendments) {
        this.amendments = List.copyOf(amendments);
    }

    /**
     * @param wire the wire
     * @param route its segments if its way is another than before, else none
     * @return the amendments, each by its id with its reason
     */
    List<String> of(Wire wire, Set<String> route) {
        List<String> found = new ArrayList<>();
        for (Amendment amendment : amendments) {
            if (concerns(amendment, wire.id(), route)) {
                found.add(words(amendment));
            }
        }
        return found;
    }

    static String words(Amendment amendment) {
        return amendment.reason().isBlank()
                ? amendment.id()
                : amendment.id() + ": " + amendment.reason();
    }

    private static boolean concerns(Amendment amendment, String wire, Set<String> route) {
        return switch (amendment) {
            case Amendment.AddWire add -> add.wire().id().equals(wire);
            case Amendment.RemoveWire remove -> remove.wire().equals(wire);
            case Amendment.ReplaceWire replace -> replace.wire().equals(wire);
            case Amendment.MoveWireEnd move -> move.wire().equals(wire);
            case Amendment.ChangeTerminal terminal -> terminal.wire().equals(wire);
            case Amendment.ChangeLength length -> route.contains(length.segment());
            case Amendment.BreakOutBranch branch -> false;
            case Amendment.ExtendBranch branch -> false;
            case Amendment.RemoveBranch branch -> false;
            case Amendment.AddDevice device -> false;
            case Amendment.RemoveDevice device -> false;
            case Amendment.ChangeDevice device -> false;
            case Amendment.ChangeVehicle vehicle -> false;
            case Amendment.ChangeCovering covering -> false;
            case Amendment.AddOpening opening -> false;
            case Amendment.RemoveOpening opening -> false;
        };
    }
}
