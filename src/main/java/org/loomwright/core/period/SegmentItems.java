package org.loomwright.core.period;

import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Evidence.EvidenceKind;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.period.Comparison.Sight;
import org.loomwright.core.period.Comparison.Verdict;
import org.loomwright.core.period.PeriodItem.Aspect;
import org.loomwright.core.period.PeriodPart.Kind;

import java.util.HashSet;
import java.util.Set;

/** The coverings of segments that are new or covered in another way, and new openings. */
final class SegmentItems {

    private static final Provenance HIDING = new Provenance(Status.FOUND, "P6");
    private static final String CLIP =
            "The recorded loom has no such clip; fixings that are there already are to be preferred"
                    + " (published).";
    private static final String OPENING =
            "The recorded loom passes no such opening. If it is a new hole it cannot be taken back;"
                    + " holes and grommets that are there already are to be preferred (published).";

    private final Comparison comparison;
    private final ItemList items;
    private final Neighbours neighbours;

    SegmentItems(Comparison comparison, ItemList items) {
        this.comparison = comparison;
        this.items = items;
        this.neighbours = new Neighbours(comparison);
    }

    void addAll() {
        Set<String> seen = new HashSet<>();
        for (Segment segment : comparison.loom().segments().values()) {
            boolean isFirst = seen.add(comparison.amended().piece(segment.id()).recorded().id());
            if (isFirst && !neighbours.isAsRecorded(segment)) {
                items.add(
                        Subject.of(ThingKind.SEGMENT, segment.id()),
                        Aspect.COVERING,
                        Neighbours.words(segment.finish()),
                        cover(segment));
            }
        }
        comparison.loom().segments().values().forEach(this::addOpenings);
    }

    private Verdict cover(Segment segment) {
        Sight sight = comparison.sightOfNode(segment.to());
        boolean isRecorded =
                comparison.stock().segments().values().stream()
                        .filter(it -> it.finish().evidence().kind() != EvidenceKind.ASSUMED)
                        .anyMatch(it -> it.finish().covering().equals(segment.finish().covering()));
        if (!isRecorded) {
            Verdict byTable = comparison.judge(Kind.COVERING, segment.finish().covering(), sight);
            if (byTable.judgement() != Judgement.AS_PERIOD) {
                return byTable;
            }
        }
        return neighbours.compare(segment, sight);
    }

    private void addOpenings(Segment segment) {
        for (Opening opening : segment.openings()) {
            if (comparison.isAdded(ThingKind.OPENING, opening.id())) {
                Sight sight = comparison.sightOf(opening, segment);
                String why = opening.kind() == OpeningKind.CLIP ? CLIP : OPENING;
                items.add(
                        Subject.of(ThingKind.OPENING, opening.id()),
                        Aspect.OPENING,
                        "%s, %s".formatted(opening.kind().words(), opening.name()),
                        new Verdict(
                                Comparison.deviation(sight),
                                why + " " + Comparison.words(sight),
                                HIDING,
                                "one that is there already"));
            }
        }
    }
}
