package org.loomwright.core.electrical;

import org.loomwright.core.catalogue.BundleFactor;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A rating and what is left of it step by step, so that a person can follow it. The steps multiply; their order does not matter.
 *
 * <p>Source: the chain free-air rating x altitude factor x bundle factor of FAA AC 43.13-1B, p. 11-27 (key A4).
 *
 * @param rating the published rating of one cable in free air
 * @param steps what reduces it
 */
public record Derating(Current rating, List<Step> steps) {

    private static final Temperature RATED_AMBIENT = Temperature.ofCelsius(30);

    /**
     * One reason why a cable carries less.
     *
     * @param reason in words
     * @param factor more than 0; at most 1 but for an ambient colder than the rating's
     * @param provenance where the factor comes from
     */
    public record Step(String reason, Ratio factor, Provenance provenance) {

        public Step {
            if (factor.compareTo(Ratio.ZERO) < 0) {
                throw new IllegalArgumentException(
                        "a derating factor is not negative, was " + factor);
            }
        }
    }

    public Derating {
        steps = List.copyOf(steps);
    }

    /** @return the rating before any step */
    public static Derating of(Current rating) {
        return new Derating(rating, List.of());
    }

    /** @return the same with one step more */
    public Derating then(Step step) {
        List<Step> more = new ArrayList<>(steps);
        more.add(step);
        return new Derating(rating, more);
    }

    /** @return the same with the step for a bundle */
    public Derating inBundle(BundleFactor bundle) {
        return then(
                new Step(
                        "%d loaded wires or more in the bundle".formatted(bundle.fromLoadedWires()),
                        bundle.factor(),
                        bundle.provenance()));
    }

    /**
     * Source: own derivation. Heat grows with the square of the current and leaves in proportion to the rise, so what is left is
     * sqrt((Tmax - Ta) / (Tmax - 30 °C)). For PVC (70 °C) at 50 °C that is 0.707; the published currents of DIN VDE 0298-4 at 50 °C are 0.707
     * to 0.713 of those at 30 °C (key X1).
     *
     * @param hottest what the insulation stands, more than 30 °C
     * @param ambient temperature round the cable
     * @return the same with the step for ambient temperature: nothing is left where the ambient is as hot as the insulation stands
     * @throws IllegalArgumentException if the insulation stands no more than 30 °C
     */
    public Derating atAmbient(Temperature hottest, Temperature ambient) {
        if (hottest.compareTo(RATED_AMBIENT) <= 0) {
            throw new IllegalArgumentException(
                    "a rating at %s needs insulation that stands more, was %s"
                            .formatted(RATED_AMBIENT, hottest));
        }
        double left = hottest.toDoubleCelsius() - ambient.toDoubleCelsius();
        double rated = hottest.toDoubleCelsius() - RATED_AMBIENT.toDoubleCelsius();
        return then(
                new Step(
                        "%s round a cable that stands %s".formatted(ambient, hottest),
                        Ratio.rounded(Math.sqrt(Math.max(0, left) / rated), RoundingMode.FLOOR),
                        new Provenance(
                                Status.COMPUTED,
                                "rise proportional to the square of the current")));
    }

    /** @return what is left after all steps, to the nearest milliampere */
    public Current left() {
        double amperes = rating.toDoubleAmperes();
        for (Step step : steps) {
            amperes *= step.factor().toDouble();
        }
        return Current.roundedFromAmperes(amperes);
    }
}
