package org.loomwright.core.bundle;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether the covered loom passes its openings. An opening passes when its clear diameter is at least the covered diameter of the
 * segment; rubber that gives a little is not counted on.
 */
public final class OpeningChecks {

    private final Catalogue catalogue;

    /**
     * @param catalogue sizes in which openings can be had
     */
    public OpeningChecks(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * @param opening an opening
     * @param bundle the bundle that runs through it
     * @return whether the bundle passes
     */
    public static boolean passes(Opening opening, SegmentBundle bundle) {
        return !bundle.covered().isLongerThan(opening.clearDiameter());
    }

    /**
     * @param bundles the bundles of a loom
     * @return a warning for each opening that its segment does not pass
     */
    public List<Finding> findings(SegmentBundles bundles) {
        List<Finding> findings = new ArrayList<>();
        for (SegmentBundle bundle : bundles.bySegment().values()) {
            for (Opening opening : bundle.segment().openings()) {
                if (!passes(opening, bundle)) {
                    findings.add(tooSmall(opening, bundle));
                }
            }
        }
        return findings;
    }

    private Finding tooSmall(Opening opening, SegmentBundle bundle) {
        return Finding.warning(
                "opening.too-small",
                Subject.of(ThingKind.OPENING, opening.id()),
                "Segment %s does not pass %s %s (%s): covered %s, clear %s. %s"
                        .formatted(
                                bundle.segment().id(),
                                opening.kind().words(),
                                opening.id(),
                                opening.name(),
                                bundle.covered(),
                                opening.clearDiameter(),
                                whatWouldFit(opening, bundle.covered())));
    }

    /**
     * @param opening an opening that is too small
     * @param covered what must pass
     * @return a sentence that says what would fit
     */
    public String whatWouldFit(Opening opening, Length covered) {
        return catalogue
                .findOpeningFor(opening.kind(), covered)
                .map(
                        size ->
                                "A %s of %s clear diameter would fit (a usual size: %s)."
                                        .formatted(
                                                opening.kind().words(),
                                                size.clearDiameter(),
                                                size.provenance().source()))
                .orElseGet(
                        () ->
                                "No %s in the catalogue is large enough; split the loom or route some wires another way."
                                        .formatted(opening.kind().words()));
    }
}
