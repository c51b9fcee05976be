package org.loomwright.core.analysis;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.bundle.OpeningChecks;
import org.loomwright.core.bundle.SegmentBundle;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A stock loom beside the amended one.
 *
 * @param before analysis of the stock loom
 * @param after analysis of the amended loom
 * @param segments what changes in each segment of the amended loom, in walking order
 * @param findings about the amended loom, the worst first; an opening that passed before and does not any more is a fault
 */
public record ChangeAnalysis(
        LoomAnalysis before,
        LoomAnalysis after,
        List<SegmentChange> segments,
        List<Finding> findings) {

    public ChangeAnalysis {
        segments = List.copyOf(segments);
        findings = List.copyOf(findings);
    }

    /**
     * @param before analysis of the stock loom
     * @param after analysis of the amended loom
     * @param recorded for each segment of the amended loom that is, or was cut from, a stock segment: the id of that one
     * @param catalogue sizes in which openings can be had
     * @return what changes
     */
    public static ChangeAnalysis of(
            LoomAnalysis before,
            LoomAnalysis after,
            Map<String, String> recorded,
            Catalogue catalogue) {
        List<SegmentChange> changes = new ArrayList<>();
        for (SegmentBundle bundle : after.bundles().bySegment().values()) {
            String stockId = recorded.get(bundle.segment().id());
            changes.add(
                    new SegmentChange(
                            stockId == null ? null : before.bundles().get(stockId), bundle));
        }
        List<Finding> findings = new ArrayList<>(after.findings());
        findings.removeIf(finding -> finding.subject().kind() == ThingKind.OPENING);
        OpeningChecks openings = new OpeningChecks(catalogue);
        changes.forEach(change -> addOpenings(change, openings, findings));
        findings.sort(Finding.WORST_FIRST);
        return new ChangeAnalysis(before, after, changes, findings);
    }

    private static void addOpenings(
            SegmentChange change, OpeningChecks checks, List<Finding> findings) {
        for (Opening opening : change.after().segment().openings()) {
            if (!OpeningChecks.passes(opening, change.after())) {
                findings.add(tooSmall(change, opening, checks));
            }
        }
    }

    private static Finding tooSmall(SegmentChange change, Opening opening, OpeningChecks checks) {
        SegmentBundle before = change.before();
        boolean passedBefore = before != null && OpeningChecks.passes(opening, before);
        String text =
                "Segment %s %s %s %s (%s): covered %s%s, clear %s. %s"
                        .formatted(
                                change.segment(),
                                passedBefore ? "no longer passes" : "does not pass",
                                opening.kind().words(),
                                opening.id(),
                                opening.name(),
                                change.after().covered(),
                                beforeWords(before),
                                opening.clearDiameter(),
                                checks.whatWouldFit(opening, change.after().covered()));
        Subject subject = Subject.of(ThingKind.OPENING, opening.id());
        return passedBefore
                ? Finding.fault("opening.no-longer-passes", subject, text)
                : Finding.warning("opening.too-small", subject, text);
    }

    private static String beforeWords(@Nullable SegmentBundle before) {
        return before == null ? "" : ", before the additions " + before.covered();
    }
}
