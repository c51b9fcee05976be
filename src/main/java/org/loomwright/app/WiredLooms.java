package org.loomwright.app;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.LoomDocument;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import java.util.List;
import java.util.UUID;

/** Fetches what is to be looked at from its electrical side. */
@Service
public class WiredLooms {

    private final Looms looms;
    private final Specifications specifications;
    private final Analyses analyses;

    WiredLooms(Looms looms, Specifications specifications, Analyses analyses) {
        this.looms = looms;
        this.specifications = specifications;
        this.analyses = analyses;
    }

    /**
     * @param id of a recorded loom
     * @return the loom, without amendments
     * @throws NotFoundException if there is no such loom
     */
    @Transactional(readOnly = true)
    public WiredLoom ofLoom(UUID id) {
        return wired(looms.get(id).document(), List.of(), AnalysisSettings.USUAL);
    }

    /**
     * @param id of a specification
     * @return its stock loom with its amendments
     * @throws NotFoundException if there is no such specification
     */
    @Transactional(readOnly = true)
    public WiredLoom ofSpecification(UUID id) {
        StoredSpecification specification = specifications.get(id);
        Specifications.Wishes wishes = specifications.wishes(specification);
        return wired(
                specification.draft().stock().document(), wishes.amendments(), wishes.settings());
    }

    private WiredLoom wired(
            LoomDocument document, List<Amendment> amendments, AnalysisSettings settings) {
        Loom stock = analyses.proven(document);
        return new WiredLoom(
                stock, analyses.apply(stock, amendments).orElseThrow(WiredLooms::broken), settings);
    }

    private static IllegalStateException broken(List<Finding> reasons) {
        return new IllegalStateException(
                "a stored specification does not hold any more: " + reasons);
    }
}
