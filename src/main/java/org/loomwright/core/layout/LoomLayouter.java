package org.loomwright.core.layout;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Polyline;
import org.loomwright.core.layout.LoomLayout.Manner;
import org.loomwright.core.layout.Placement.Room;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Lays a loom flat.
 *
 * <p>Own derivation. The tree is divided into spines. Each is laid, large ones first, at its tidiest course that keeps the
 * clearance from everything laid before. When one finds no room, it is laid earlier in the next attempt; after some attempts the
 * scale goes down one step. If no scale works, half the clearance is tried, then a quarter, and at last a fan, which always works. The work is
 * counted in legs laid and pairs looked at, never in time: the same loom and room give the same drawing everywhere, whatever the order of the
 * lists in the loom's document.
 *
 * <p>Cost: bounded by the counted work; measured 0.1 s for 100 legs, 0.5 s for 200, less for more. Stateless.
 */
public final class LoomLayouter {

    private static final int ATTEMPTS = 8;

    /** Beyond this share of the room taken by legs and the clearance along them, no attempt is worth its time. Own trials. */
    private static final double CROWDED = 0.3;

    /** For one kind of search, about a sixth of a second; less for a loom so large that only a fan will hold it. Own trials. */
    private static final long MOST_WORK = 1_500_000;

    private static final long MANY_LEGS = 200;

    /** More legs cannot leave one node and stay 15 degrees apart. */
    private static final int MOST_AT_A_NODE = 24;

    /** A straight trunk is preferred while the drawing gets no smaller than this share of the largest. */
    private static final double STRAIGHT_WORTH = 0.45;

    private final LayoutTree tree;
    private final List<Spine> spines;
    private final LayoutRoom room;
    private final long mostWork;
    private long workLeft;

    private LoomLayouter(Loom loom, Map<String, Length> thickness, LayoutRoom room) {
        this.tree = new LayoutTree(loom, thickness);
        this.spines = Spine.of(tree);
        this.room = room;
        this.mostWork = MOST_WORK * MANY_LEGS / Math.max(MANY_LEGS, tree.size());
    }

    /**
     * @param loom the loom
     * @param thickness diameter by segment id, as far as known; the trunk is the longest and thickest run
     * @param room where it must fit
     * @return the drawing at the largest usual scale that was found
     */
    public static LoomLayout fit(Loom loom, Map<String, Length> thickness, LayoutRoom room) {
        return new LoomLayouter(loom, thickness, room).fit();
    }

    private LoomLayout fit() {
        if (tree.mostAtANode() > MOST_AT_A_NODE) {
            return fanned();
        }
        for (double share : new double[] {1, 0.5, 0.25}) {
            workLeft = mostWork;
            LoomLayout found = search(share);
            if (found != null) {
                return found;
            }
        }
        return fanned();
    }

    private @Nullable LoomLayout search(double share) {
        double largest = 0;
        for (DrawingScale scale : DrawingScale.USUAL) {
            if (trunkFits(scale) && areaFits(scale, share)) {
                largest = Math.max(largest, 1.0 / scale.tenths());
                LoomLayout found = attempt(scale, share, false);
                if (found != null
                        || workLeft <= 0
                        || 1.0 / scale.tenths() < STRAIGHT_WORTH * largest) {
                    if (found != null) {
                        return found;
                    }
                    break;
                }
            }
        }
        workLeft = mostWork;
        for (DrawingScale scale : DrawingScale.USUAL) {
            if (areaFits(scale, share) && workLeft > 0) {
                LoomLayout found = attempt(scale, share, true);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    private boolean trunkFits(DrawingScale scale) {
        return scale.onSheetMm(spines.getFirst().lengthMm()) <= room.width().toDoubleMillimetres();
    }

    private boolean areaFits(DrawingScale scale, double share) {
        double clearance = room.clearance().toDoubleMillimetres() * share;
        double needed = scale.onSheetMm(tree.totalMm()) * clearance;
        return needed
                <= CROWDED
                        * room.width().toDoubleMillimetres()
                        * room.height().toDoubleMillimetres();
    }

    private @Nullable LoomLayout attempt(DrawingScale scale, double share, boolean folding) {
        double clearance = room.clearance().toDoubleMillimetres() * share;
        Room mm =
                new Room(
                        room.width().toDoubleMillimetres(),
                        room.height().toDoubleMillimetres(),
                        clearance);
        List<Spine> order = new ArrayList<>(spines);
        for (int attempt = 0; attempt < ATTEMPTS && workLeft > 0; attempt++) {
            Placement placement = new Placement(tree, scale, mm, folding, workLeft);
            Spine stuck = placement.drawAll(order);
            workLeft -= placement.cost();
            if (stuck == null) {
                return Drawn.of(tree, spines, scale, clearance, Manner.TIDY, placement.legs());
            }
            if (!promote(order, stuck)) {
                return null;
            }
        }
        return null;
    }

    /** Lays a spine as early as the one that it hangs on allows. */
    private boolean promote(List<Spine> order, Spine stuck) {
        int at = order.indexOf(stuck);
        int earliest = 1;
        for (int i = 0; i < at; i++) {
            if (order.get(i).legs().contains(stuck.hungOn())) {
                earliest = Math.max(1, i + 1);
            }
        }
        if (earliest >= at) {
            return earliest > 1 && promote(order, order.get(earliest - 1));
        }
        order.remove(at);
        order.add(earliest, stuck);
        return true;
    }

    private LoomLayout fanned() {
        List<Polyline> legs = FanLayout.of(tree);
        for (DrawingScale scale : DrawingScale.USUAL) {
            LoomLayout drawn = fan(legs, scale);
            if (fits(drawn)) {
                return drawn;
            }
        }
        return farOff(legs);
    }

    /** Smaller than any usual scale, so that even the longest chain of segments stays on the sheet. */
    private LoomLayout farOff(List<Polyline> legs) {
        DrawingScale scale = DrawingScale.USUAL.getLast();
        LoomLayout drawn = fan(legs, scale);
        while (!fits(drawn)) {
            scale = new DrawingScale(Math.multiplyExact(scale.tenths(), 2));
            drawn = fan(legs, scale);
        }
        return drawn;
    }

    private LoomLayout fan(List<Polyline> legs, DrawingScale scale) {
        return Drawn.of(tree, spines, scale, 0, Manner.FANNED, Drawn.scaled(legs, scale));
    }

    private boolean fits(LoomLayout drawn) {
        return !drawn.width().isLongerThan(room.width())
                && !drawn.height().isLongerThan(room.height());
    }
}
