package org.loomwright.core.finder;

import java.util.List;

/**
 * The wires that may be the one that was seen.
 *
 * @param wires the best first
 * @param passedOver how many more fit less well and are not listed
 * @param meter which lead of the meter goes where on this vehicle
 * @param caution what to mind while measuring
 */
public record FoundWires(List<FoundWire> wires, int passedOver, String meter, String caution) {

    /** Common practice, no source. */
    public static final String CAUTION =
            "The loom is live while you measure: set the meter to volts, never to amperes; let"
                + " probes touch one thing only; take rings and watch off. Disconnect the battery"
                + " before you cut or undo anything.";

    public FoundWires {
        wires = List.copyOf(wires);
    }
}
