package org.loomwright.core.bundle;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The bundles of every segment of one loom, in walking order. Immutable and thread-safe. */
public final class SegmentBundles {

    private final Map<String, SegmentBundle> bySegment;

    private SegmentBundles(Map<String, SegmentBundle> bySegment) {
        this.bySegment = Collections.unmodifiableMap(bySegment);
    }

    /**
     * @param loom a proven loom
     * @param routes its routes
     * @param catalogue the tables that it refers to
     * @param packer packs and remembers
     * @param effort how hard to look for the tightest arrangement
     * @param layFactor laid over tight diameter
     * @return its bundles
     */
    public static SegmentBundles of(
            Loom loom,
            Routes routes,
            Catalogue catalogue,
            BundlePacker packer,
            Effort effort,
            LayFactor layFactor) {
        Map<String, SegmentBundle> bundles = new LinkedHashMap<>();
        SegmentCounts.of(loom, routes)
                .forEach(
                        (id, counts) -> {
                            Segment segment = loom.getSegment(id);
                            bundles.put(
                                    id,
                                    new SegmentBundle(
                                            segment,
                                            counts,
                                            packer.pack(diameters(counts, catalogue), effort),
                                            layFactor.forWires(counts.total()),
                                            catalogue.getCovering(segment.finish().covering())));
                        });
        return new SegmentBundles(bundles);
    }

    private static List<Length> diameters(WireCounts counts, Catalogue catalogue) {
        List<Length> diameters = new ArrayList<>();
        counts.byClass()
                .forEach(
                        (wireClass, count) ->
                                diameters.addAll(
                                        Collections.nCopies(
                                                count,
                                                catalogue
                                                        .getSize(wireClass.size())
                                                        .outsideDiameter())));
        return diameters;
    }

    /** @return bundles by segment id, in walking order */
    public Map<String, SegmentBundle> bySegment() {
        return bySegment;
    }

    /**
     * @param segment id of a segment of this loom
     * @return its bundle
     * @throws IllegalArgumentException if there is no such segment
     */
    public SegmentBundle get(String segment) {
        SegmentBundle bundle = bySegment.get(segment);
        if (bundle == null) {
            throw new IllegalArgumentException("there is no segment " + segment);
        }
        return bundle;
    }

    /** @return tight diameter by segment id */
    public Map<String, Length> tightDiameters() {
        Map<String, Length> diameters = new LinkedHashMap<>();
        bySegment.forEach((id, bundle) -> diameters.put(id, bundle.tight()));
        return diameters;
    }
}
