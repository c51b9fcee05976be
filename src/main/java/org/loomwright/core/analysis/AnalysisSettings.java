package org.loomwright.core.analysis;

import org.loomwright.core.bundle.LayFactor;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.routing.Allowances;

/**
 * The figures that a person may set before an analysis.
 *
 * @param allowances what is added to a measured length before a wire is cut
 * @param layFactor how much thicker a real bundle is than the tightest one
 * @param effort how hard to look for the tightest arrangement of a bundle
 */
public record AnalysisSettings(Allowances allowances, LayFactor layFactor, Effort effort) {

    /** What is used when nothing is set. */
    public static final AnalysisSettings USUAL =
            new AnalysisSettings(Allowances.USUAL, LayFactor.PUBLISHED, Effort.NORMAL);
}
