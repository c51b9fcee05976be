package org.loomwright.document.sheet.content;

import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;

import java.util.List;
import java.util.Optional;

/** Which findings the customer takes as they are. */
public final class Acceptance {

    private final List<AcceptedFinding> accepted;

    /**
     * @param accepted what was accepted, in any order
     */
    public Acceptance(List<AcceptedFinding> accepted) {
        this.accepted = List.copyOf(accepted);
    }

    /** @return the acceptance of that finding, if there is one */
    public Optional<AcceptedFinding> of(Finding finding) {
        return accepted.stream().filter(one -> one.isAbout(finding)).findFirst();
    }

    /** @return whether that finding was accepted */
    public boolean covers(Finding finding) {
        return of(finding).isPresent();
    }

    /** @return how many of them were accepted */
    public int countIn(List<Finding> findings) {
        return Math.toIntExact(findings.stream().filter(this::covers).count());
    }
}
