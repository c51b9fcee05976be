package org.loomwright.core.catalogue;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;

/**
 * A relay as it can be had.
 *
 * @param code short name, for example {@code make-30}
 * @param name the relay in words
 * @param coilLeast least current of its coil at 12 V
 * @param coilMost most current of its coil at 12 V
 * @param coilProvenance where the currents of the coil come from
 * @param pullIn share of the nominal voltage at which it pulls in
 * @param contact the most that its contact carries
 * @param points names of its points
 * @param provenance where everything but the coil's currents comes from
 */
public record RelayType(
        String code,
        String name,
        Current coilLeast,
        Current coilMost,
        Provenance coilProvenance,
        Ratio pullIn,
        Current contact,
        Points points,
        Provenance provenance) {

    /** What the contacts of a relay do. */
    public enum Form {
        /** One contact, open until the coil pulls in. */
        MAKE,
        /** A contact that opens and one that closes when the coil pulls in. */
        CHANGEOVER
    }

    /**
     * The names of a relay's points.
     *
     * @param common the moving contact
     * @param makes joined to it while the coil has pulled in
     * @param breaks joined to it while the coil has not, or null where there is none
     * @param coil one end of the coil
     * @param coilReturn its other end, or null where that is the relay's body
     */
    public record Points(
            String common,
            String makes,
            @Nullable String breaks,
            String coil,
            @Nullable String coilReturn) {

        /** @return what its contacts do */
        public Form form() {
            return breaks == null ? Form.MAKE : Form.CHANGEOVER;
        }
    }

    public RelayType {
        if (coilLeast.milliamperes() <= 0 || coilLeast.compareTo(coilMost) > 0) {
            throw new IllegalArgumentException(
                    "the coil of %s cannot take %s to %s".formatted(code, coilLeast, coilMost));
        }
        if (pullIn.compareTo(Ratio.ZERO) <= 0 || pullIn.compareTo(Ratio.ONE) >= 0) {
            throw new IllegalArgumentException(
                    "%s cannot pull in at %s of its voltage".formatted(code, pullIn));
        }
        if (contact.milliamperes() <= 0) {
            throw new IllegalArgumentException(
                    "the contact of %s cannot carry %s".formatted(code, contact));
        }
    }
}
