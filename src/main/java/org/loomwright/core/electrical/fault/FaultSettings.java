package org.loomwright.core.electrical.fault;

import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What a short-circuit what-if takes for granted. Everything may be edited.
 *
 * @param insulation temperature of the metal at which the insulation counts as harmed
 * @param insulationSource where that comes from
 * @param openings how soon a fuse opens at the latest, by rising multiples of what it carries for ever, each sooner than the one before
 * @param openingSource where those come from
 */
public record FaultSettings(
        Temperature insulation,
        Provenance insulationSource,
        List<Opening> openings,
        Provenance openingSource) {

    /**
     * At least so much, at most so long.
     *
     * @param multiple of the continuous current of the fuse
     * @param within in which time it has opened
     */
    public record Opening(Ratio multiple, Duration within) {}

    private static final Provenance RECALLED = new Provenance(Status.MEMORY, "from memory");

    /**
     * All from memory: PVC is spoilt at 160 °C; a fuse has opened after 5 s at twice, after 0.5 s at three and a half times and after 0.1 s at
     * six times what it carries for ever.
     */
    public static final FaultSettings USUAL =
            new FaultSettings(
                    Temperature.ofCelsius(160),
                    RECALLED,
                    List.of(
                            new Opening(new Ratio(2_000_000), Duration.ofSeconds(5)),
                            new Opening(new Ratio(3_500_000), Duration.ofMillis(500)),
                            new Opening(new Ratio(6_000_000), Duration.ofMillis(100))),
                    RECALLED);

    public FaultSettings {
        openings = List.copyOf(openings);
        for (int i = 1; i < openings.size(); i++) {
            Opening before = openings.get(i - 1);
            Opening after = openings.get(i);
            if (after.multiple().compareTo(before.multiple()) <= 0
                    || after.within().compareTo(before.within()) >= 0) {
                throw new IllegalArgumentException(
                        "a fuse opens sooner at more current, but at %s and %s times it takes %s and %s"
                                .formatted(
                                        before.multiple(),
                                        after.multiple(),
                                        before.within(),
                                        after.within()));
            }
        }
    }

    /** In which time a fuse has opened, empty where it may stay whole. */
    Optional<Duration> opensWithin(Current continuous, Current through) {
        double times = through.toDoubleAmperes() / continuous.toDoubleAmperes();
        return openings.stream()
                .filter(opening -> times >= opening.multiple().toDouble())
                .reduce((slower, sooner) -> sooner)
                .map(Opening::within);
    }

    /** The most that a fuse may carry for ever if that current is to open it in that time, empty where none is known to. */
    Optional<Current> mostContinuous(Current through, Duration within) {
        return openings.stream()
                .filter(opening -> opening.within().compareTo(within) <= 0)
                .findFirst()
                .map(
                        opening ->
                                Current.roundedFromAmperes(
                                        through.toDoubleAmperes() / opening.multiple().toDouble()));
    }
}
