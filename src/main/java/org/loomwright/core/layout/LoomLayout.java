package org.loomwright.core.layout;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Polyline;
import org.loomwright.core.quantity.Length;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A loom laid flat. Every leg is as long as its segment times the scale, give or take a micrometre on the sheet, and runs from the
 * node nearer the datum to the farther one.
 *
 * <p>Two points of the drawing are never nearer to each other than the clearance, except where they are also near along the loom
 * (two legs at their breakout): there they stay apart by at least 0.13 of the way along the loom, which is the gap of two legs that
 * part at 15 degrees. A drawing in the manner {@link Manner#FANNED} promises only that no two legs touch.
 *
 * @param scale of the drawing
 * @param width of the drawing on the sheet, rounded up
 * @param height of the drawing on the sheet, rounded up
 * @param clearance that was kept on the sheet; zero for a fanned drawing
 * @param manner how the legs were placed
 * @param legs by segment id, in the order of a walk from the datum
 * @param nodes place by node id
 * @param trunk the segments of the trunk, from one end to the other
 */
public record LoomLayout(
        DrawingScale scale,
        Length width,
        Length height,
        Length clearance,
        Manner manner,
        Map<String, Polyline> legs,
        Map<String, Point> nodes,
        List<String> trunk) {

    /** How legs were placed. */
    public enum Manner {
        /** At tidy angles, the trunk straight or folded, the clearance kept. */
        TIDY,
        /** As a fan in which each branch has a sector of its own: the way that always works. */
        FANNED
    }

    public LoomLayout {
        legs = Collections.unmodifiableMap(new LinkedHashMap<>(legs));
        nodes = Collections.unmodifiableMap(new LinkedHashMap<>(nodes));
        trunk = List.copyOf(trunk);
    }

    /**
     * @param segment id of a segment of the loom
     * @return its leg
     * @throws IllegalArgumentException if there is none
     */
    public Polyline getLeg(String segment) {
        Polyline leg = legs.get(segment);
        if (leg == null) {
            throw new IllegalArgumentException("the drawing has no segment " + segment);
        }
        return leg;
    }

    /**
     * @param node id of a node of the loom
     * @return its place
     * @throws IllegalArgumentException if there is none
     */
    public Point getNode(String node) {
        Point place = nodes.get(node);
        if (place == null) {
            throw new IllegalArgumentException("the drawing has no node " + node);
        }
        return place;
    }
}
