package org.loomwright.app;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.loom.Loom;

/**
 * A loom to be looked at from its electrical side.
 *
 * @param stock the loom as it was recorded
 * @param amended the loom with its amendments, of which there may be none
 * @param settings what is calculated with, with the workshop's own figures
 */
public record WiredLoom(Loom stock, AmendedLoom amended, AnalysisSettings settings) {

    /** @return the loom as it is going to be */
    public Loom loom() {
        return amended.loom();
    }
}
