package org.loomwright.app;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.loom.Loom;

/**
 * A loom to be looked at from its electrical side.
 *
 * @param stock the loom as it was recorded
 * @param amended the loom with its amendments, of which there may be none
 */
public record Wiring(Loom stock, AmendedLoom amended) {

    /** @return the loom as it is going to be */
    public Loom loom() {
        return amended.loom();
    }
}
