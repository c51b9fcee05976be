package org.loomwright.core.electrical;

import org.loomwright.core.quantity.Temperature;

/** Between which temperatures the rules are taken to hold: own choice, wider than any cable insulation stands. */
final class ConductorRange {

    private static final Temperature COLDEST = Temperature.ofCelsius(-60);
    private static final Temperature HOTTEST = Temperature.ofCelsius(200);

    private ConductorRange() {}

    static Temperature checked(Temperature temperature) {
        if (temperature.compareTo(COLDEST) < 0 || temperature.compareTo(HOTTEST) > 0) {
            throw new IllegalArgumentException(
                    "a conductor has %s to %s, was %s".formatted(COLDEST, HOTTEST, temperature));
        }
        return temperature;
    }
}
