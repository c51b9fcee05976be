package org.loomwright.core.finding;

/**
 * A finding that the customer has seen and takes as it is, with the reason.
 *
 * @param code of the rule
 * @param kind of the thing that it is about
 * @param id of the thing; empty for the loom, the vehicle and settings
 * @param reason why it is taken, in the customer's words
 */
public record AcceptedFinding(String code, ThingKind kind, String id, String reason) {

    /** @return whether it is this finding that was accepted */
    public boolean isAbout(Finding finding) {
        return code.equals(finding.code())
                && kind == finding.subject().kind()
                && id.equals(finding.subject().id());
    }
}
