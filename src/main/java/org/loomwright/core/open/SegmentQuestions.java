package org.loomwright.core.open;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Opening.PassDirection;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.Routes;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Is everything said of coverings and openings? What was one segment when it was recorded is asked about once. */
final class SegmentQuestions {

    /** Words of a note that tell whether a cover without coats was meant to have none. */
    private static final List<String> LACQUER_WORDS = List.of("lacquer", "varnish", "plain", "dry");

    private final Inquiry inquiry;
    private final Map<String, Length> widest = new HashMap<>();

    SegmentQuestions(Inquiry inquiry) {
        this.inquiry = inquiry;
        Routes routes = new Routes(inquiry.loom());
        inquiry.loom().wires().values().forEach(wire -> noteWidths(wire, routes.of(wire)));
    }

    private void noteWidths(Wire wire, List<Segment> route) {
        Stream.of(wire.a(), wire.b())
                .map(WireEnd::terminal)
                .flatMap(terminal -> inquiry.expectations().width(terminal).stream())
                .forEach(
                        width ->
                                route.forEach(
                                        segment ->
                                                widest.merge(
                                                        segment.id(),
                                                        width,
                                                        SegmentQuestions::wider)));
    }

    private static Length wider(Length one, Length other) {
        return one.isLongerThan(other) ? one : other;
    }

    void ask() {
        Set<String> seen = new HashSet<>();
        for (Segment segment : inquiry.loom().walk()) {
            if (seen.add(inquiry.amended().piece(segment.id()).recorded().id())) {
                askForEvidence(segment);
                askForWeave(segment);
            }
            segment.openings().forEach(opening -> askForDirection(segment, opening));
        }
    }

    /** A finish that an amendment wants needs no evidence. */
    private void askForEvidence(Segment segment) {
        Finish finish = segment.finish();
        if (isAsRecorded(segment)) {
            inquiry.ask(
                    OpenRule.FINISH,
                    subject(segment),
                    finish.evidence().kind() != EvidenceKind.ASSUMED,
                    "The finish of segment %s (%s) was assumed; nobody has looked."
                            .formatted(segment.id(), words(finish)),
                    "What shows the covering of %s, its yarns, tracers, picks and lacquer: the loom itself, a place under a clip, a photograph or a second loom?"
                            .formatted(segment.id()));
        }
    }

    private boolean isAsRecorded(Segment segment) {
        Segment recorded = inquiry.amended().piece(segment.id()).recorded();
        return inquiry.stock().segments().containsKey(recorded.id())
                && recorded.finish().equals(segment.finish());
    }

    private static String words(Finish finish) {
        String yarn = finish.baseYarn() == null ? "" : ", yarn " + finish.baseYarn();
        String tracers =
                finish.tracers().isEmpty()
                        ? ", no tracer"
                        : ", tracers " + String.join(" ", finish.tracers());
        return finish.covering() + (yarn.isEmpty() ? "" : yarn + tracers);
    }

    private void askForWeave(Segment segment) {
        Finish finish = segment.finish();
        if (!inquiry.catalogue().getCovering(finish.covering()).woven()) {
            return;
        }
        inquiry.ask(
                OpenRule.PICKS,
                subject(segment),
                finish.picksPer25Mm() != null,
                "The cover of segment %s is woven, and nobody counted its picks."
                        .formatted(segment.id()),
                "How many picks on 25 mm has, or shall have, the cover of %s?"
                        .formatted(segment.id()));
        inquiry.ask(
                OpenRule.LACQUER,
                subject(segment),
                finish.lacquerCoats() > 0 || tellsOfLacquer(finish.evidence().note()),
                "The cover of segment %s has no coats of lacquer, and its note does not say that it is to stay plain."
                        .formatted(segment.id()),
                "Is the cover of %s lacquered, and with how many coats? If it is to stay plain, say 'plain' in its note."
                        .formatted(segment.id()));
    }

    private static boolean tellsOfLacquer(String note) {
        String lower = note.toLowerCase(Locale.ROOT);
        return LACQUER_WORDS.stream().anyMatch(lower::contains);
    }

    private void askForDirection(Segment segment, Opening opening) {
        Length width = widest.getOrDefault(segment.id(), Length.ZERO);
        if (!width.plus(width).isLongerThan(opening.clearDiameter())
                || opening.passes() == PassDirection.OPENS) {
            return;
        }
        inquiry.ask(
                OpenRule.PASSES,
                Subject.of(ThingKind.OPENING, opening.id()),
                opening.passes() != PassDirection.EITHER,
                "Opening %s (%s, %s clear) may be passed either way, and a terminal about %s across belongs to a wire in it."
                        .formatted(opening.id(), opening.name(), opening.clearDiameter(), width),
                "Which way is the loom fed through %s?".formatted(opening.id()));
    }

    private static Subject subject(Segment segment) {
        return Subject.of(ThingKind.SEGMENT, segment.id());
    }
}
