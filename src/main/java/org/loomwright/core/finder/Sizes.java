package org.loomwright.core.finder;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.List;

/** How well the size of a wire fits what somebody measured or counted. */
final class Sizes {

    /** Up to this much beside the nominal diameter counts as that diameter, and up to the other as perhaps: own choice. */
    private static final long SAME_UM = 200;

    private static final long NEAR_UM = 600;
    private static final Length THICKEST = Length.ofMillimetres(50);
    private static final int MOST_STRANDS = 2_000;

    private final Catalogue catalogue;

    Sizes(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Finding> check(Sighting sighting) {
        List<Finding> findings = new ArrayList<>();
        String size = sighting.size();
        if (size != null && catalogue.findSize(size).isEmpty()) {
            findings.add(
                    fault(
                            "finder.size-unknown",
                            "There is no conductor size '%s'.".formatted(size)));
        }
        Integer strands = sighting.strands();
        if (strands != null && (strands < 1 || strands > MOST_STRANDS)) {
            findings.add(
                    fault(
                            "finder.strands-not-sane",
                            "A wire has 1 to %d strands, not %d."
                                    .formatted(MOST_STRANDS, strands)));
        }
        Length outside = sighting.outside();
        if (outside != null && (outside.micrometres() <= 0 || outside.isLongerThan(THICKEST))) {
            findings.add(
                    fault(
                            "finder.diameter-not-sane",
                            "A wire measures more than 0 mm and at most %s, not %s."
                                    .formatted(THICKEST, outside)));
        }
        return findings;
    }

    private static Finding fault(String code, String text) {
        return Finding.fault(code, Subject.of(ThingKind.REQUEST, ""), text);
    }

    /** One fit for each thing that was said about the size. */
    List<Fit> fits(Wire wire, Sighting sighting) {
        List<Fit> fits = new ArrayList<>();
        String size = sighting.size();
        if (size != null) {
            fits.add(yesOrNo(wire.size().equals(size), "size", wire.size()));
        }
        Integer strands = sighting.strands();
        if (strands != null) {
            boolean same = wire.size().startsWith(strands + "/");
            fits.add(yesOrNo(same, "number of strands", wire.size()));
        }
        Length outside = sighting.outside();
        if (outside != null) {
            fits.add(diameter(catalogue.getSize(wire.size()), outside));
        }
        return fits;
    }

    private static Fit yesOrNo(boolean fits, String what, String size) {
        return fits
                ? Fit.of(1_000, "the %s fits (%s)".formatted(what, size))
                : Fit.of(0, "the %s does not fit (%s)".formatted(what, size));
    }

    private static Fit diameter(ConductorSize size, Length outside) {
        long apart = Math.abs(outside.micrometres() - size.outsideDiameter().micrometres());
        int share = apart <= SAME_UM ? 1_000 : apart <= NEAR_UM ? 500 : 0;
        String fits = share == 1_000 ? "fits" : share > 0 ? "may fit" : "does not fit";
        return Fit.of(
                share,
                "the diameter %s: %s measures %s (%s)"
                        .formatted(
                                fits,
                                size.designation(),
                                size.outsideDiameter(),
                                size.diameterProvenance().status().words()));
    }
}
