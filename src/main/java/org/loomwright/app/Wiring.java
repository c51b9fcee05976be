package org.loomwright.app;

import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.loom.Loom;

import java.util.Optional;

/**
 * A loom to be looked at from its electrical side: a stock loom alone, or with what was amended.
 *
 * @param stock the loom as it was recorded
 * @param amended the loom with its amendments, if there are any
 */
public record Wiring(Loom stock, Optional<AmendedLoom> amended) {

    /** @return a stock loom alone */
    public static Wiring of(Loom stock) {
        return new Wiring(stock, Optional.empty());
    }

    /** @return the loom as it is going to be */
    public Loom loom() {
        return amended.map(AmendedLoom::loom).orElse(stock);
    }
}
