package org.loomwright.core.electrical.check;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.finding.Finding;

import java.util.Comparator;
import java.util.Optional;

/**
 * A finding with the figures behind it.
 *
 * @param finding what was found
 * @param scenario name of the scenario in which it is worst, empty where it holds in all
 * @param figure what was calculated, or null where there is nothing to calculate
 * @param limit what it is held against, in the same unit, or null where there is none
 * @param source where the limit comes from, or null where there is none
 * @param remedy what would put it right, empty where nothing needs doing
 */
public record ElectricalFinding(
        Finding finding,
        String scenario,
        @Nullable Figure figure,
        @Nullable Figure limit,
        @Nullable Provenance source,
        String remedy) {

    /** The worst first, as people read them. */
    public static final Comparator<ElectricalFinding> WORST_FIRST =
            Comparator.comparing(ElectricalFinding::finding, Finding.WORST_FIRST)
                    .thenComparing(ElectricalFinding::scenario);

    /** @return a finding without figures */
    public static ElectricalFinding of(Finding finding, String remedy) {
        return new ElectricalFinding(finding, "", null, null, null, remedy);
    }

    /** @return the same with another remedy */
    public ElectricalFinding withRemedy(String other) {
        return new ElectricalFinding(finding, scenario, figure, limit, source, other);
    }

    /** @return limit less figure: how much is left, negative where the limit is broken */
    public Optional<Figure> margin() {
        return limit == null || figure == null
                ? Optional.empty()
                : Optional.of(limit.minus(figure));
    }
}
