package org.loomwright.document.sheet.electrical;

import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.electrical.structure.Newcomers;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;

import java.util.List;

/** The wires that a job brings. */
final class NewWires {

    private NewWires() {}

    /** Those that were not there or ran between other points, in the order of their ids. */
    static List<Wire> added(ChangeAnalysis change) {
        Newcomers newcomers = new Newcomers(change.before().loom());
        return change.after().loom().wires().values().stream().filter(newcomers::isNew).toList();
    }

    /** The same and those that are renewed in the place of an old one. */
    static List<Wire> made(ChangeAnalysis change) {
        Loom recorded = change.before().loom();
        Newcomers newcomers = new Newcomers(recorded);
        return change.after().loom().wires().values().stream()
                .filter(wire -> newcomers.isNew(wire) || isRenewed(wire, recorded))
                .toList();
    }

    private static boolean isRenewed(Wire wire, Loom recorded) {
        Wire before = recorded.wires().get(wire.id());
        return before != null
                && (before.condition() != wire.condition() || !before.size().equals(wire.size()));
    }
}
