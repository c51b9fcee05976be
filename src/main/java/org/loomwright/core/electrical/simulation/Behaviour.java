package org.loomwright.core.electrical.simulation;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.loom.DeviceKind;

import java.util.List;

/**
 * One row of what devices do: between which points of a kind of device stands what.
 *
 * @param kind of the device
 * @param from name of a point, {@code *} for every point, or {@code ?} where no other row fits
 * @param to names of points or {@code body}, the first that exists; {@code *} for every other point; {@code ?} for the second
 * @param element what stands there
 * @param provenance where the row comes from
 */
public record Behaviour(
        DeviceKind kind, String from, List<String> to, Element element, Provenance provenance) {

    /** The node of a net that is the vehicle's body. */
    public static final String BODY = "body";

    static final String EVERY = "*";
    static final String FALLBACK = "?";

    public Behaviour {
        to = List.copyOf(to);
        if (from.isBlank()) {
            throw new IllegalArgumentException("a behaviour begins at a point");
        }
        if (to.isEmpty() && element != Element.NONE) {
            throw new IllegalArgumentException(
                    "the %s of a %s at %s ends nowhere".formatted(element, kind.words(), from));
        }
    }

    boolean isFallback() {
        return from.equals(FALLBACK);
    }
}
