package org.loomwright.core.amendment;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.AmendedLoom.Piece;
import org.loomwright.core.amendment.Origin.Act;
import org.loomwright.core.amendment.Origin.ByAmendment;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A segment as it was recorded, or as an amendment added it, with the breakouts that amendments made along it. All positions
 * count along the whole; pieces are worked out only at the end, so breakouts do not depend on their order and taking one back
 * leaves no trace.
 */
final class Whole {

    /** A breakout along the whole: its node, the id of the part beyond it, the amendment that made it. */
    record Cut(Length at, String node, String farSegment, String madeBy) {}

    /** One piece of the result. */
    record Part(Segment segment, Piece piece, Origin origin) {}

    private final Segment recorded;
    private final @Nullable String madeBy;
    private final Tracked<Length> length;
    private final Tracked<Finish> finish;
    private final Map<String, Tracked<Opening>> openings = new LinkedHashMap<>();
    private final TreeMap<Length, Cut> cuts = new TreeMap<>();

    Whole(Segment recorded, @Nullable String madeBy) {
        this.recorded = recorded;
        this.madeBy = madeBy;
        this.length = Tracked.stock(recorded.length());
        this.finish = Tracked.stock(recorded.finish());
        for (Opening opening : recorded.openings()) {
            openings.put(opening.id(), Tracked.made(opening, madeBy));
        }
    }

    Segment recorded() {
        return recorded;
    }

    boolean isStock() {
        return madeBy == null;
    }

    Tracked<Length> length() {
        return length;
    }

    Tracked<Finish> finish() {
        return finish;
    }

    Map<String, Tracked<Opening>> openings() {
        return openings;
    }

    /** The breakouts, from the end nearer the datum. */
    List<Cut> cuts() {
        return List.copyOf(cuts.values());
    }

    Optional<Cut> findCut(Length at) {
        return Optional.ofNullable(cuts.get(at));
    }

    void cut(Cut cut) {
        cuts.put(cut.at(), cut);
    }

    void heal(Cut cut) {
        cuts.remove(cut.at());
    }

    /** The openings beyond that length, in their order. */
    List<Opening> openingsBeyond(Length limit) {
        return openings.values().stream()
                .map(Tracked::now)
                .filter(opening -> opening.position().isLongerThan(limit))
                .toList();
    }

    /** The pieces, from the end nearer the datum; the whole itself when no breakout was made. */
    List<Part> parts() {
        if (cuts.isEmpty()) {
            return List.of(uncut());
        }
        Map<Length, List<Opening>> shared = sharedOpenings();
        List<Part> parts = new ArrayList<>();
        Cut before = null;
        for (Cut cut : cuts.values()) {
            parts.add(between(before, cut, shared));
            before = cut;
        }
        parts.add(between(before, null, shared));
        return parts;
    }

    private Part uncut() {
        boolean sameLength = length.now().equals(recorded.length());
        Segment segment =
                (sameLength ? recorded : recorded.withLength(length.now()))
                        .withFinish(finish.now())
                        .withOpenings(openings.values().stream().map(Tracked::now).toList());
        return new Part(
                segment,
                new Piece(recorded, Length.ZERO),
                Tracked.originOf(madeBy, changesOfTheWhole()));
    }

    /** Which piece each opening falls to, by where the piece begins; one exactly at a cut stays on the near side. */
    private Map<Length, List<Opening>> sharedOpenings() {
        Map<Length, List<Opening>> shared = new TreeMap<>();
        for (Tracked<Opening> tracked : openings.values()) {
            Opening opening = tracked.now();
            Length below = cuts.lowerKey(opening.position());
            Length start = below == null ? Length.ZERO : below;
            shared.computeIfAbsent(start, key -> new ArrayList<>()).add(moved(opening, start));
        }
        return shared;
    }

    private static Opening moved(Opening opening, Length start) {
        return new Opening(
                opening.id(),
                opening.name(),
                opening.kind(),
                opening.position().minus(start),
                opening.clearDiameter(),
                opening.passes());
    }

    private Part between(
            @Nullable Cut near, @Nullable Cut far, Map<Length, List<Opening>> sharedOpenings) {
        Length start = near == null ? Length.ZERO : near.at();
        Length end = far == null ? length.now() : far.at();
        Segment segment =
                new Segment(
                        near == null ? recorded.id() : near.farSegment(),
                        near == null ? recorded.from() : near.node(),
                        far == null ? recorded.to() : far.node(),
                        end.minus(start),
                        List.of(),
                        near == null ? recorded.leaves() : null,
                        bendsUpTo(end) - bendsUpTo(start),
                        finish.now(),
                        sharedOpenings.getOrDefault(start, List.of()));
        return new Part(segment, new Piece(recorded, start), originBetween(near, far));
    }

    /** Bends are spread evenly along the whole and rounded where it is cut, so that the pieces add up to the whole. */
    private int bendsUpTo(Length position) {
        long total = length.now().micrometres();
        return (int)
                ((2L * recorded.bendDegrees() * position.micrometres() + total) / (2L * total));
    }

    private Origin originBetween(@Nullable Cut near, @Nullable Cut far) {
        List<String> changes = new ArrayList<>();
        if (near != null) {
            changes.add(near.madeBy());
        }
        if (far != null) {
            changes.add(far.madeBy());
        }
        changes.addAll(changesOfTheWhole());
        return near == null && madeBy != null
                ? Tracked.originOf(madeBy, changes)
                : new ByAmendment(Act.CUT, changes);
    }

    private List<String> changesOfTheWhole() {
        List<String> changes = new ArrayList<>(length.changes());
        changes.addAll(finish.changes());
        return changes;
    }
}
