package org.loomwright.core.analysis;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;

import java.util.List;
import java.util.Optional;

/** Wires that were found in a state in which nobody should cover them up without a word. */
final class WireConditions {

    private WireConditions() {}

    /** A warning for each wire that was found missing, damaged or brittle, in the order of their ids. */
    static List<Finding> findings(Loom loom) {
        return loom.wires().values().stream()
                .map(WireConditions::finding)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Finding> finding(Wire wire) {
        return switch (wire.condition()) {
            case MISSING ->
                    warning(
                            wire,
                            "wire.missing",
                            "is recorded as missing. It is counted in the bundles, but there is"
                                    + " nothing to keep: renew it.");
            case DAMAGED ->
                    warning(
                            wire,
                            "wire.damaged",
                            "was found damaged and is kept. Renew it before it is covered.");
            case BRITTLE ->
                    warning(
                            wire,
                            "wire.brittle",
                            "was found brittle and is kept. Test its insulation, and renew it if it"
                                    + " fails.");
            case GOOD, FADED, REPAIRED, UNKNOWN, NEW -> Optional.empty();
        };
    }

    private static Optional<Finding> warning(Wire wire, String code, String what) {
        return Optional.of(
                Finding.warning(
                        code,
                        Subject.of(ThingKind.WIRE, wire.id()),
                        "Wire %s, %s %s (%s), %s"
                                .formatted(
                                        wire.id(),
                                        wire.colour(),
                                        wire.size(),
                                        wire.circuit(),
                                        what)));
    }
}
