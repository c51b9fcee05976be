package org.loomwright.core.loom;

import org.loomwright.core.quantity.Voltage;

import java.util.List;

/**
 * The vehicle that the loom belongs to, as far as it decides about the loom.
 *
 * @param name marque and model in the owner's words
 * @param year year of first use
 * @param hand driver's side
 * @param earth which battery terminal goes to the body
 * @param system nominal system voltage
 * @param notStandard what differs from how it left the factory, one sentence each
 */
public record VehicleSheet(
        String name,
        int year,
        Hand hand,
        EarthPolarity earth,
        Voltage system,
        List<String> notStandard) {

    public VehicleSheet {
        notStandard = List.copyOf(notStandard);
    }
}
