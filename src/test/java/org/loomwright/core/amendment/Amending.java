package org.loomwright.core.amendment;

import static org.loomwright.testing.LoomSketch.mm;
import static org.loomwright.testing.LoomSketch.plainSegment;

import org.loomwright.core.amendment.Amendment.BreakOutBranch;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Node;
import org.loomwright.testing.TestCatalogue;

import java.util.List;

/** Short ways to say "apply these and it has to work" and "apply these and it must not". */
final class Amending {

    private Amending() {}

    static AmendedLoom accept(Loom stock, Amendment... amendments) {
        return accept(stock, List.of(amendments));
    }

    static AmendedLoom accept(Loom stock, List<Amendment> amendments) {
        return Amendments.apply(stock, amendments, TestCatalogue.get())
                .orElseThrow(reasons -> new IllegalStateException("refused: " + reasons));
    }

    static List<Finding> refuse(Loom stock, Amendment... amendments) {
        return switch (Amendments.apply(stock, List.of(amendments), TestCatalogue.get())) {
            case Outcome.Accepted<AmendedLoom> accepted ->
                    throw new AssertionError("accepted: " + accepted.value());
            case Outcome.Rejected<AmendedLoom>(List<Finding> reasons) -> reasons;
        };
    }

    /** Breaks a branch of 300 mm out: node N-A1, branch B-A1, end E-A1, far piece S2-far-A1. */
    static BreakOutBranch breakOut(String id, String segment, long atMm) {
        return new BreakOutBranch(
                id,
                "",
                segment,
                mm(atMm),
                new Node("N-" + id, "breakout of " + id),
                segment + "-far-" + id,
                plainSegment("B-" + id, "N-" + id, "E-" + id, 300),
                new Node("E-" + id, "end of " + id));
    }
}
