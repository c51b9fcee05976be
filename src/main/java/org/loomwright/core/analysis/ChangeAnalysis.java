package org.loomwright.core.analysis;

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
 * @param gone the bundles of stock segments that the amended loom does not have any more, in walking order
 * @param findings about the amended loom, the worst first; an opening that passed before and does not any more is a fault
 */
public record ChangeAnalysis(
        LoomAnalysis before,
        LoomAnalysis after,
        List<SegmentChange> segments,
        List<SegmentBundle> gone,
        List<Finding> findings) {

    public ChangeAnalysis {
        segments = List.copyOf(segments);
        gone = List.copyOf(gone);
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
        List<SegmentBundle> gone =
                before.bundles().bySegment().values().stream()
                        .filter(bundle -> !recorded.containsValue(bundle.segment().id()))
                        .toList();
        return new ChangeAnalysis(before, after, changes, gone, findings);
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
        if (before == null || !hasOpening(before, opening)) {
            return Finding.fault(
                    "opening.new-too-small",
                    Subject.of(ThingKind.OPENING, opening.id()),
                    words(change, opening, "does not pass the new", "", checks));
        }
        String covered = ", before the additions " + before.covered();
        Subject subject = Subject.of(ThingKind.OPENING, opening.id());
        return OpeningChecks.passes(opening, before)
                ? Finding.fault(
                        "opening.no-longer-passes",
                        subject,
                        words(change, opening, "no longer passes", covered, checks))
                : Finding.warning(
                        "opening.too-small",
                        subject,
                        words(change, opening, "does not pass", covered, checks));
    }

    private static boolean hasOpening(SegmentBundle before, Opening opening) {
        return before.segment().openings().stream()
                .anyMatch(recorded -> recorded.id().equals(opening.id()));
    }

    private static String words(
            SegmentChange change,
            Opening opening,
            String verb,
            String before,
            OpeningChecks checks) {
        return "Segment %s %s %s %s (%s): covered %s%s, clear %s. %s"
                .formatted(
                        change.segment(),
                        verb,
                        opening.kind().words(),
                        opening.id(),
                        opening.name(),
                        change.after().covered(),
                        before,
                        opening.clearDiameter(),
                        checks.whatWouldFit(opening, change.after().covered()));
    }
}
