package org.loomwright.core.kit.expansion;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EndToEnd;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.core.loom.Node;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gives ids that nothing has, nor ever had: an id names one thing for the whole list of amendments. */
final class Ids {

    private final Set<String> taken = new HashSet<>();
    private final String prefix;

    Ids(LoomDocument stock, List<Amendment> existing, String prefix) {
        this.prefix = prefix;
        stock.nodes().stream().map(Node::id).forEach(taken::add);
        stock.segments().forEach(this::take);
        stock.devices().stream().map(Device::id).forEach(taken::add);
        stock.wires().stream().map(Wire::id).forEach(taken::add);
        stock.checks().stream().map(EndToEnd::id).forEach(taken::add);
        existing.forEach(this::take);
    }

    private void take(Segment segment) {
        taken.add(segment.id());
        segment.openings().stream().map(Opening::id).forEach(taken::add);
    }

    private void take(Amendment amendment) {
        taken.add(amendment.id());
        switch (amendment) {
            case Amendment.AddWire(String id, String reason, Wire wire) -> taken.add(wire.id());
            case Amendment.BreakOutBranch branch -> {
                taken.addAll(
                        List.of(branch.breakout().id(), branch.farSegment(), branch.end().id()));
                take(branch.branch());
            }
            case Amendment.ExtendBranch(String id, String reason, Segment branch, Node end) -> {
                taken.add(end.id());
                take(branch);
            }
            case Amendment.AddDevice(String id, String reason, Device device) ->
                    taken.add(device.id());
            case Amendment.AddOpening(String id, String reason, String segment, Opening opening) ->
                    taken.add(opening.id());
            case Amendment.RemoveWire it -> {}
            case Amendment.ReplaceWire it -> {}
            case Amendment.MoveWireEnd it -> {}
            case Amendment.ChangeTerminal it -> {}
            case Amendment.ChangeLength it -> {}
            case Amendment.RemoveBranch it -> {}
            case Amendment.RemoveDevice it -> {}
            case Amendment.ChangeCovering it -> {}
            case Amendment.RemoveOpening it -> {}
            case Amendment.ChangeDevice it -> {}
            case Amendment.ChangeVehicle it -> {}
        }
    }

    /** @return the prefix, the letter and the next free number of two digits or more */
    String next(String letter) {
        int number = 1;
        while (!taken.add(numbered(letter, number))) {
            number++;
        }
        return numbered(letter, number);
    }

    private String numbered(String letter, int number) {
        return "%s-%s%s%d".formatted(prefix, letter, number < 10 ? "0" : "", number);
    }

    /** @return the wanted id, or with the least number behind it that makes it free */
    String like(String wanted) {
        String id = wanted;
        for (int number = 2; !taken.add(id); number++) {
            id = wanted + "-" + number;
        }
        return id;
    }
}
