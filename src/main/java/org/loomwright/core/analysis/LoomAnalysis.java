package org.loomwright.core.analysis;

import org.loomwright.core.bundle.BundlePacker;
import org.loomwright.core.bundle.OpeningChecks;
import org.loomwright.core.bundle.SegmentBundles;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.routing.ClosingChecks;
import org.loomwright.core.routing.CutLength;
import org.loomwright.core.routing.CutLengths;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything computed about one loom.
 *
 * @param loom the loom
 * @param routes its paths
 * @param bundles what runs through each segment and how thick it is
 * @param cutLengths by wire id, in their order
 * @param findings the worst first
 */
public record LoomAnalysis(
        Loom loom,
        Routes routes,
        SegmentBundles bundles,
        Map<String, CutLength> cutLengths,
        List<Finding> findings) {

    /**
     * @param loom a proven loom
     * @param settings figures that a person may set
     * @param catalogue the tables that the loom refers to
     * @param packer packs bundles and remembers them
     * @return the analysis
     */
    public static LoomAnalysis of(
            Loom loom, AnalysisSettings settings, Catalogue catalogue, BundlePacker packer) {
        Routes routes = new Routes(loom);
        SegmentBundles bundles =
                SegmentBundles.of(
                        loom, routes, catalogue, packer, settings.effort(), settings.layFactor());
        CutLengths lengths =
                new CutLengths(
                        loom, routes, catalogue, settings.allowances(), bundles.tightDiameters());
        Map<String, CutLength> byWire = new LinkedHashMap<>();
        lengths.all().forEach(cut -> byWire.put(cut.wire(), cut));
        List<Finding> findings = new ArrayList<>(new ClosingChecks(loom, routes).findings());
        findings.addAll(new OpeningChecks(catalogue).findings(bundles));
        findings.addAll(WireConditions.findings(loom));
        findings.sort(Finding.WORST_FIRST);
        return new LoomAnalysis(
                loom, routes, bundles, Collections.unmodifiableMap(byWire), List.copyOf(findings));
    }

    /**
     * @param wire id of a wire of this loom
     * @return its cut length
     * @throws IllegalArgumentException if there is no such wire
     */
    public CutLength getCutLength(String wire) {
        CutLength cut = cutLengths.get(wire);
        if (cut == null) {
            throw new IllegalArgumentException("there is no wire " + wire);
        }
        return cut;
    }
}
