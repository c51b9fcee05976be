package org.loomwright.core.electrical.structure;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;

import java.util.Set;

/**
 * What the checks take for good practice. Everything may be edited.
 *
 * @param mostRings how many ring terminals one earth screw may hold
 * @param ringsSource where that comes from
 * @param offWhenParked codes of services that are to be off with the ignition
 * @param withSideLamps codes of services that are to burn only with the side lamps
 * @param fedSource where the two lists come from
 */
public record StructureSettings(
        int mostRings,
        Provenance ringsSource,
        Set<String> offWhenParked,
        Set<String> withSideLamps,
        Provenance fedSource) {

    private static final Provenance PRACTICE =
            new Provenance(Status.MEMORY, "common practice, no source");

    /** All from memory: four rings; fans, gauges, radios, wipers and heaters go off with the ignition; fog and panel lamps follow the side lamps. */
    public static final StructureSettings USUAL =
            new StructureSettings(
                    4,
                    PRACTICE,
                    Set.of(
                            "fan",
                            "fuel-gauge",
                            "fuel-pump",
                            "heated-rear-window",
                            "heated-screen",
                            "heated-seat",
                            "heater",
                            "oil-pressure",
                            "radio",
                            "tachometer",
                            "temperature-gauge",
                            "voltmeter",
                            "washer",
                            "wiper"),
                    Set.of("fog-lamps", "panel-lamps", "rear-fog-lamp"),
                    PRACTICE);

    public StructureSettings {
        offWhenParked = Set.copyOf(offWhenParked);
        withSideLamps = Set.copyOf(withSideLamps);
        if (mostRings < 1) {
            throw new IllegalArgumentException(
                    "an earth screw holds at least one ring, was " + mostRings);
        }
    }
}
