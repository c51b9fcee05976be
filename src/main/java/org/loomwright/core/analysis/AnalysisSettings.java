package org.loomwright.core.analysis;

import org.loomwright.core.bundle.LayFactor;
import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.routing.Allowances;

import java.util.Comparator;
import java.util.List;

/**
 * The figures that a person may set before an analysis.
 *
 * @param allowances what is added to a measured length before a wire is cut
 * @param layFactor how much thicker a real bundle is than the tightest one
 * @param effort how hard to look for the tightest arrangement of a bundle
 * @param overrides a workshop's own figures in the place of the catalogue's, at most one for each figure; kept in the order of tables, rows
 *     and columns
 */
public record AnalysisSettings(
        Allowances allowances,
        LayFactor layFactor,
        Effort effort,
        List<CatalogueOverride> overrides) {

    private static final Comparator<CatalogueOverride> ORDER =
            Comparator.comparing(CatalogueOverride::table)
                    .thenComparing(CatalogueOverride::row)
                    .thenComparing(CatalogueOverride::column);

    /** What is used when nothing is set. */
    public static final AnalysisSettings USUAL =
            new AnalysisSettings(Allowances.USUAL, LayFactor.PUBLISHED, Effort.NORMAL);

    public AnalysisSettings {
        overrides = overrides.stream().sorted(ORDER).toList();
    }

    /** Settings with the catalogue's own figures. */
    public AnalysisSettings(Allowances allowances, LayFactor layFactor, Effort effort) {
        this(allowances, layFactor, effort, List.of());
    }
}
