package org.loomwright.document.sheet.content;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.ChangeAnalysis;
import org.loomwright.core.analysis.SegmentChange;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Covering;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;
import org.loomwright.document.sheet.content.WireChange.Kind;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is to be done to the wires of a loom: the stock loom's wires beside the amended one's.
 *
 * <p>A wire is cut anew when it is added, when its colour or size is another, when it is replaced by new wire, or when the way
 * it has to go is longer or shorter than before. A wire that only gets another terminal is kept.
 */
public final class WireWork {

    private final ChangeAnalysis change;
    private final Catalogue catalogue;
    private final Reasons reasons;
    private final List<WireChange> changes = new ArrayList<>();

    /**
     * @param change both looms with their analyses
     * @param amendments what led from one to the other
     * @param catalogue names of terminals
     */
    public WireWork(ChangeAnalysis change, List<Amendment> amendments, Catalogue catalogue) {
        this.change = change;
        this.catalogue = catalogue;
        this.reasons = new Reasons(amendments);
        TreeMap<String, Wire> before = new TreeMap<>(change.before().loom().wires());
        TreeMap<String, Wire> after = new TreeMap<>(change.after().loom().wires());
        Set<String> ids = new HashSet<>(before.keySet());
        ids.addAll(after.keySet());
        ids.stream().sorted().forEach(id -> compare(before.get(id), after.get(id)));
    }

    /** @return wires of that kind, in the order of their ids */
    public List<WireChange> of(Kind kind) {
        return changes.stream().filter(wire -> wire.kind() == kind).toList();
    }

    /** @return wires for which new wire is cut, in the order of their ids */
    public List<WireChange> made() {
        return changes.stream().filter(WireChange::made).toList();
    }

    /** @return how much new wire is cut in all */
    public Length cutInAll() {
        return Length.sum(
                made().stream()
                        .map(wire -> change.after().getCutLength(wire.wire().id()).cut())
                        .toList());
    }

    /** @return segments of the amended loom where the covering is opened, renewed or new, in walking order */
    public List<SegmentChange> touched() {
        Set<String> routes = new HashSet<>();
        made().forEach(
                        wire ->
                                change.after().routes().of(wire.wire()).stream()
                                        .map(Segment::id)
                                        .forEach(routes::add));
        return change.segments().stream()
                .filter(
                        segment ->
                                segment.isChanged()
                                        || routes.contains(segment.segment())
                                        || isRefinished(segment))
                .toList();
    }

    /** @return length of the covered ones among the touched segments */
    public Length coveredLengthTouched() {
        return Length.sum(
                touched().stream()
                        .filter(segment -> isCovered(segment.after().covering()))
                        .map(segment -> segment.after().segment().length())
                        .toList());
    }

    /** @return segments of the amended loom that begin where an amendment broke out or extended a branch */
    public List<SegmentChange> newBranches() {
        return change.segments().stream().filter(segment -> segment.before() == null).toList();
    }

    private static boolean isCovered(Covering covering) {
        return covering.wall().isPositive();
    }

    private static boolean isRefinished(SegmentChange segment) {
        return segment.before() != null
                && !segment.before().segment().finish().equals(segment.after().segment().finish());
    }

    private void compare(@Nullable Wire before, @Nullable Wire after) {
        if (after == null && before != null) {
            add(Kind.REMOVED, before, null, false, List.of(), before);
        } else if (before == null && after != null) {
            add(Kind.ADDED, null, after, true, List.of(), after);
        } else if (before != null && after != null) {
            List<String> differences = differences(before, after);
            if (!differences.isEmpty()) {
                add(Kind.CHANGED, before, after, isMade(before, after), differences, after);
            }
        }
    }

    private void add(
            Kind kind,
            @Nullable Wire before,
            @Nullable Wire after,
            boolean made,
            List<String> differences,
            Wire wire) {
        boolean longer = !differences.isEmpty() && !measured(before).equals(measured(after, true));
        List<String> why = reasons.of(wire, longer ? route(wire) : Set.of());
        changes.add(new WireChange(kind, before, after, made, differences, why));
    }

    private Set<String> route(Wire wire) {
        Set<String> ids = new HashSet<>();
        change.after().routes().of(wire).forEach(segment -> ids.add(segment.id()));
        return ids;
    }

    private Length measured(@Nullable Wire wire) {
        return measured(wire, false);
    }

    private Length measured(@Nullable Wire wire, boolean amended) {
        if (wire == null) {
            return Length.ZERO;
        }
        return (amended ? change.after() : change.before()).getCutLength(wire.id()).measured();
    }

    private boolean isMade(Wire before, Wire after) {
        return !before.colour().equals(after.colour())
                || !before.size().equals(after.size())
                || isRenewed(before, after)
                || !measured(before).equals(measured(after, true));
    }

    private static boolean isRenewed(Wire before, Wire after) {
        return after.condition() == Condition.NEW && before.condition() != Condition.NEW;
    }

    private List<String> differences(Wire before, Wire after) {
        List<String> found = new ArrayList<>();
        note(found, "colour", before.colour().letters(), after.colour().letters());
        note(found, "size", before.size(), after.size());
        note(found, "circuit", before.circuit(), after.circuit());
        for (Side side : Side.values()) {
            noteEnd(found, side, before.end(side), after.end(side));
        }
        Length was = measured(before);
        Length is = measured(after, true);
        if (!was.equals(is)) {
            found.add("way %s, was %s".formatted(is, was));
        }
        if (found.isEmpty() && isRenewed(before, after)) {
            found.add("new wire, alike");
        }
        return found;
    }

    private static void note(List<String> found, String what, String was, String is) {
        if (!Objects.equals(was, is)) {
            found.add("%s %s, was %s".formatted(what, is, was));
        }
    }

    private void noteEnd(List<String> found, Side side, WireEnd was, WireEnd is) {
        if (!was.isOnSamePointAs(is)) {
            found.add(
                    "end %s on %s, was on %s"
                            .formatted(
                                    side,
                                    Places.words(change.after().loom(), is),
                                    Places.words(change.before().loom(), was)));
        }
        note(found, "terminal " + side, terminal(was), terminal(is));
    }

    private String terminal(WireEnd end) {
        return Places.terminal(catalogue, end);
    }
}
