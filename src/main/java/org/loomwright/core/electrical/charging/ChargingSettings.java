package org.loomwright.core.electrical.charging;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.quantity.Ratio;

import java.util.Map;

/**
 * What a charging balance takes for granted. Everything may be edited.
 *
 * @param capacityAmpereHours what the battery holds when it is full, more than 0
 * @param usable which share of it may be taken before the battery counts as flat, more than 0 and at most 1
 * @param duties by code of a service, which share of the time it draws current in a scenario that has it on; 1 where nothing is said; flashers have their own
 *     setting in the simulation
 * @param soonHours a battery that is flat after fewer hours at speed makes a fault of a warning
 * @param source where all of these come from
 */
public record ChargingSettings(
        int capacityAmpereHours,
        Ratio usable,
        Map<String, Ratio> duties,
        int soonHours,
        Provenance source) {

    private static final Ratio HALF = new Ratio(500_000);
    private static final Ratio NOW_AND_THEN = new Ratio(20_000);
    private static final Ratio SELDOM = new Ratio(100_000);

    /** All from memory: 50 Ah, half of which may be taken; horns sound one fiftieth of the time, something
     * is plugged into a power socket a tenth of it; two hours. */
    public static final ChargingSettings USUAL =
            new ChargingSettings(
                    50,
                    HALF,
                    Map.of("horns", NOW_AND_THEN, "power-socket", SELDOM),
                    2,
                    new Provenance(Status.MEMORY, "from memory"));

    public ChargingSettings {
        duties = Map.copyOf(duties);
        if (capacityAmpereHours <= 0) {
            throw new IllegalArgumentException(
                    "a battery holds more than 0 Ah, was " + capacityAmpereHours);
        }
        if (usable.compareTo(Ratio.ZERO) <= 0 || usable.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(
                    "the usable share is more than 0 and at most 1, was " + usable);
        }
        duties.forEach(
                (service, duty) -> {
                    if (duty.compareTo(Ratio.ZERO) < 0 || duty.compareTo(Ratio.ONE) > 0) {
                        throw new IllegalArgumentException(
                                "a duty is 0 to 1, that of %s was %s".formatted(service, duty));
                    }
                });
    }
}
