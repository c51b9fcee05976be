package org.loomwright.core.period;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.period.Comparison.Sight;
import org.loomwright.core.period.Comparison.Verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether a cover looks like that of its neighbours. The neighbours of a leg are the recorded legs that the fewest breakouts lie
 * between, those of a trunk the nearest recorded trunks; where there are none of the kind, the nearest recorded segments. One neighbour
 * that it looks like is enough. Cost: once round the tree for each new segment at most. Own rule.
 */
final class Neighbours {

    private final Comparison comparison;

    Neighbours(Comparison comparison) {
        this.comparison = comparison;
    }

    /** Whether it is of the stock loom and covered as it was recorded. */
    boolean isAsRecorded(Segment segment) {
        Segment recorded = comparison.amended().piece(segment.id()).recorded();
        return comparison.stock().segments().containsKey(recorded.id())
                && differences(segment.finish(), recorded.finish()).isEmpty();
    }

    Verdict compare(Segment segment, Sight sight) {
        List<Segment> near = nearest(segment);
        if (near.isEmpty()) {
            return Verdict.of(
                    Judgement.UNKNOWN, "No recorded segment is left to compare the cover with.");
        }
        Optional<Segment> alike =
                near.stream()
                        .filter(it -> differences(segment.finish(), it.finish()).isEmpty())
                        .findFirst();
        return alike.map(
                        it ->
                                Verdict.of(
                                        Judgement.AS_PERIOD,
                                        "The cover is like that of the neighbouring segment %s."
                                                .formatted(it.id())))
                .orElseGet(() -> unlike(segment, near.getFirst(), sight));
    }

    private static Verdict unlike(Segment segment, Segment neighbour, Sight sight) {
        String why =
                "Unlike the neighbouring segment %s it has %s. %s"
                        .formatted(
                                neighbour.id(),
                                String.join(
                                        "; ", differences(segment.finish(), neighbour.finish())),
                                Comparison.words(sight));
        return Verdict.of(Comparison.deviation(sight), why).instead(words(neighbour.finish()));
    }

    private List<Segment> nearest(Segment segment) {
        List<Segment> alike = nearest(segment, isLeg(segment));
        return alike.isEmpty() ? nearest(segment, !isLeg(segment)) : alike;
    }

    private boolean isLeg(Segment segment) {
        return comparison.loom().degree(segment.to()) == 1;
    }

    /** Goes outwards from the segment, breakout by breakout, until one has neighbours of the kind. */
    private List<Segment> nearest(Segment segment, boolean legs) {
        Set<String> seen = new HashSet<>(Set.of(segment.from(), segment.to()));
        Set<String> front = new LinkedHashSet<>(List.of(segment.from(), segment.to()));
        while (!front.isEmpty()) {
            List<Segment> touching = front.stream().flatMap(this::touching).distinct().toList();
            List<Segment> found =
                    touching.stream()
                            .filter(it -> isAsRecorded(it) && isLeg(it) == legs)
                            .sorted(Comparator.comparing(Segment::id))
                            .toList();
            if (!found.isEmpty()) {
                return found;
            }
            front = new LinkedHashSet<>();
            for (Segment it : touching) {
                Stream.of(it.from(), it.to()).filter(seen::add).forEach(front::add);
            }
        }
        return List.of();
    }

    private Stream<Segment> touching(String node) {
        return Stream.concat(
                comparison.loom().findArriving(node).stream(),
                comparison.loom().leaving(node).stream());
    }

    /** In what the covers differ, leaving out why we believe in them. */
    private static List<String> differences(Finish one, Finish other) {
        List<String> differences = new ArrayList<>();
        if (!one.covering().equals(other.covering())) {
            differences.add("%s, not %s".formatted(one.covering(), other.covering()));
        }
        if (!Objects.equals(one.baseYarn(), other.baseYarn())) {
            differences.add(
                    "main yarn %s, not %s".formatted(or(one.baseYarn()), or(other.baseYarn())));
        }
        if (!one.tracers().equals(other.tracers())) {
            differences.add("%s, not %s".formatted(tracers(one), tracers(other)));
        }
        if (!Objects.equals(one.picksPer25Mm(), other.picksPer25Mm())) {
            differences.add(
                    "%s picks on 25 mm, not %s"
                            .formatted(or(one.picksPer25Mm()), or(other.picksPer25Mm())));
        }
        if (one.lacquerCoats() != other.lacquerCoats()) {
            differences.add(
                    "%d coats of lacquer, not %d"
                            .formatted(one.lacquerCoats(), other.lacquerCoats()));
        }
        return differences;
    }

    private static String or(@Nullable Object value) {
        return value == null ? "none said" : value.toString();
    }

    private static String tracers(Finish finish) {
        return finish.tracers().isEmpty()
                ? "no tracer"
                : "tracers " + String.join(" ", finish.tracers());
    }

    static String words(Finish finish) {
        if (finish.baseYarn() == null) {
            return finish.covering();
        }
        return "%s, yarn %s, %s, %s picks on 25 mm, %d coats of lacquer"
                .formatted(
                        finish.covering(),
                        finish.baseYarn(),
                        tracers(finish),
                        or(finish.picksPer25Mm()),
                        finish.lacquerCoats());
    }
}
