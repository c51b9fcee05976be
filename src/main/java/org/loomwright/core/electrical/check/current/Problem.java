package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.remedy.Proposal;

/**
 * A finding, with what is needed to look for a change that puts it right.
 *
 * @param finding the finding; its remedy is what can be said without looking for one
 * @param cure what may be changed, or null where nothing is looked for
 * @param change what puts it right, where no simulation is needed to know, or null
 */
record Problem(ElectricalFinding finding, @Nullable Cure cure, @Nullable Proposal change) {

    Problem(ElectricalFinding finding, Cure cure) {
        this(finding, cure, null);
    }

    static final String NO_SINGLE_CHANGE =
            "No thicker wire, relay or other feed was found that puts it right by itself.";

    static final String NOT_SOUGHT =
            "A thicker wire, a relay or another feed may put it right; none was tried.";

    /** The finding where no change is looked for, which must not say that none was found. */
    ElectricalFinding unsought() {
        return finding.remedy().equals(NO_SINGLE_CHANGE) ? finding.withRemedy(NOT_SOUGHT) : finding;
    }

    static Problem told(ElectricalFinding finding) {
        return new Problem(finding, null, null);
    }
}
