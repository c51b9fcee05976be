package org.loomwright.core.loom;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;

import java.util.Comparator;
import java.util.List;

/**
 * What may be known about a device besides its load. Nothing of it has to be said.
 *
 * @param serves code of the service in the catalogue that it belongs to, for example {@code reversing-lamps}
 * @param rating the most that its contacts carry, that its scale shows, or that it gives at speed where it is a generator
 * @param voltage nominal voltage that it is made for, where nobody said the system's
 * @param needsEarth which battery terminal must go to the body for it to work
 * @param fuses the fuses that are fitted in it
 */
public record Particulars(
        @Nullable String serves,
        @Nullable Current rating,
        @Nullable Voltage voltage,
        @Nullable EarthPolarity needsEarth,
        List<FittedFuse> fuses) {

    /** Nothing is known. */
    public static final Particulars NONE = new Particulars(null, null, null, null, List.of());

    public Particulars {
        fuses = List.copyOf(fuses);
    }

    /** @return the same with the fuses in the order of their points */
    Particulars ordered() {
        Comparator<FittedFuse> order =
                Comparator.comparing(FittedFuse::from).thenComparing(FittedFuse::to);
        return new Particulars(
                serves, rating, voltage, needsEarth, fuses.stream().sorted(order).toList());
    }
}
