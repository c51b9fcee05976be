package org.loomwright.core.amendment;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A loom after its amendments, with the origin of every part. Immutable and thread-safe.
 *
 * @param loom the amended loom, proven
 * @param origins the origin of each part that is not as it was recorded; see {@link #origin}
 * @param pieces for each segment that is not as it was recorded, what it was cut from; see {@link #piece}
 * @param takenOut parts of the stock loom that are gone, in the order of the list of amendments
 * @param voided end-to-end checks of the stock loom that no longer speak, because a length between their ends was changed or
 *     one of their ends is gone: id of the check to id of the amendment that did it
 */
public record AmendedLoom(
        Loom loom,
        Map<Subject, Origin> origins,
        Map<String, Piece> pieces,
        List<TakenOut> takenOut,
        Map<String, String> voided) {

    /**
     * What a segment was cut from.
     *
     * @param recorded the whole segment as it was recorded or as an amendment added it, with its repeat readings, before any
     *     breakout, change of length or change of covering
     * @param offset where the piece begins along the whole segment
     */
    public record Piece(Segment recorded, Length offset) {}

    /**
     * A part of the stock loom that is gone.
     *
     * @param thing kind and id, without a place in a document
     * @param amendment the amendment that took it out
     */
    public record TakenOut(Subject thing, String amendment) {}

    public AmendedLoom {
        origins = Map.copyOf(origins);
        pieces = Map.copyOf(pieces);
        takenOut = List.copyOf(takenOut);
        voided = Map.copyOf(voided);
    }

    /**
     * Where a part comes from. A point was added with its device and does not change with it.
     *
     * @param kind vehicle, node, segment, opening, device, point or wire
     * @param id id of a part of this loom; for a point {@code device/point}, for the vehicle empty
     * @return its origin
     */
    public Origin origin(ThingKind kind, String id) {
        return origins.getOrDefault(Subject.of(kind, id), Origin.STOCK);
    }

    /**
     * @param segment id of a segment of this loom
     * @return the recorded segment that it is or was cut from, and at which offset it begins
     * @throws IllegalArgumentException if this loom has no such segment
     */
    public Piece piece(String segment) {
        Piece cut = pieces.get(segment);
        if (cut != null) {
            return cut;
        }
        Segment whole = loom.segments().get(segment);
        if (whole == null) {
            throw new IllegalArgumentException(loom + " has no segment " + segment);
        }
        return new Piece(whole, Length.ZERO);
    }

    /** @return for each segment of this loom that is, or was cut from, a segment of the stock loom: the id of that one */
    public Map<String, String> recordedSegments(Loom stock) {
        Map<String, String> recorded = new LinkedHashMap<>();
        for (String segment : loom.segments().keySet()) {
            String whole = piece(segment).recorded().id();
            if (stock.segments().containsKey(whole)) {
                recorded.put(segment, whole);
            }
        }
        return Collections.unmodifiableMap(recorded);
    }
}
