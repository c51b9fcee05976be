package org.loomwright.core.loom;

import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;

/**
 * A colour that one loom has and the code does not have.
 *
 * @param letters a capital that the code leaves free, or {@code X} and another capital, for example {@code XD}
 * @param name the colour in words, for example {@code gold}
 * @param swatch how it is drawn, as {@code #rrggbb}
 */
public record CustomColour(String letters, String name, String swatch) {

    private static final Provenance OWN =
            new Provenance(Status.WORKSHOP, "declared in the loom; no published code has it");

    /** @return the colour as one beside those of the code; nothing says what it is fed from */
    public BaseColour basic() {
        return new BaseColour(letters, name, "", swatch, OWN);
    }
}
