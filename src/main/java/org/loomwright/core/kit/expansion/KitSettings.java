package org.loomwright.core.kit.expansion;

import org.loomwright.core.electrical.simulation.ElectricalSettings;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;

/**
 * By which rules of its own a kit chooses. Everything may be edited.
 *
 * @param family ending of the designations of the sizes that new wires are chosen from
 * @param least designation of the smallest size that is used
 * @param mostSteps by how many sizes a wire may grow to lose as little as new work should, beyond what must not be exceeded
 * @param conductors temperature of the metal at which drop is computed
 * @param negligible share of a limit that an addition may take even where the limit is reached already
 * @param mostOnEarth how many rings one earth point holds where nobody said
 * @param farthestEarth how far from a load its earth point may be before a new one is made beside it
 * @param electrical resistances of contacts, coil current and take-up
 */
public record KitSettings(
        String family,
        String least,
        int mostSteps,
        Temperature conductors,
        Ratio negligible,
        int mostOnEarth,
        Length farthestEarth,
        ElectricalSettings electrical) {

    /**
     * From memory: conductors at 40 °C, three to four rings on an earth point, an earth within 1 m. Own choice: sizes of 0.30 mm strands from 14 of
     * them on, two sizes more to lose less, an addition of 2 % of a limit is of no account.
     */
    public static final KitSettings USUAL =
            new KitSettings(
                    "/0.30",
                    "14/0.30",
                    2,
                    Temperature.ofCelsius(40),
                    new Ratio(20_000),
                    4,
                    Length.ofMillimetres(1_000),
                    ElectricalSettings.USUAL);

    public KitSettings {
        if (mostOnEarth < 1 || mostSteps < 0) {
            throw new IllegalArgumentException(
                    "an earth point holds a ring and steps are not negative, were %d and %d"
                            .formatted(mostOnEarth, mostSteps));
        }
    }
}
