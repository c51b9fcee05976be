package org.loomwright.core.layout;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Polyline;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.layout.LoomLayout.Manner;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.quantity.Length;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes the result out of placed legs: moved so that it begins in the origin. */
final class Drawn {

    private Drawn() {}

    static LoomLayout of(
            LayoutTree tree,
            List<Spine> spines,
            DrawingScale scale,
            double clearanceMm,
            Manner manner,
            List<Polyline> legs) {
        Rectangle bounds = bounds(legs);
        Map<String, Polyline> bySegment = new LinkedHashMap<>();
        Map<String, Point> byNode = new LinkedHashMap<>();
        for (int i = 0; i < legs.size(); i++) {
            Segment segment = tree.segment(i);
            Polyline leg = moved(legs.get(i), bounds);
            bySegment.put(segment.id(), leg);
            byNode.putIfAbsent(segment.from(), leg.points().getFirst());
            byNode.put(segment.to(), leg.points().getLast());
        }
        return new LoomLayout(
                scale,
                Length.roundedFromMillimetres(bounds.widthMm(), RoundingMode.CEILING),
                Length.roundedFromMillimetres(bounds.heightMm(), RoundingMode.CEILING),
                Length.roundedFromMillimetres(clearanceMm, RoundingMode.FLOOR),
                manner,
                bySegment,
                byNode,
                trunk(tree, spines));
    }

    static List<Polyline> scaled(List<Polyline> legs, DrawingScale scale) {
        return legs.stream()
                .map(
                        leg ->
                                new Polyline(
                                        leg.points().stream()
                                                .map(
                                                        point ->
                                                                new Point(
                                                                        scale.onSheetMm(
                                                                                point.xMm()),
                                                                        scale.onSheetMm(
                                                                                point.yMm())))
                                                .toList()))
                .toList();
    }

    private static Rectangle bounds(List<Polyline> legs) {
        Point start = legs.getFirst().points().getFirst();
        Rectangle bounds = Rectangle.around(start, start);
        for (Polyline leg : legs) {
            for (Point point : leg.points()) {
                bounds = bounds.with(Rectangle.around(point, point));
            }
        }
        return bounds;
    }

    private static Polyline moved(Polyline leg, Rectangle bounds) {
        return new Polyline(
                leg.points().stream()
                        .map(
                                point ->
                                        new Point(
                                                point.xMm() - bounds.leftMm(),
                                                point.yMm() - bounds.topMm()))
                        .toList());
    }

    private static List<String> trunk(LayoutTree tree, List<Spine> spines) {
        List<String> ids = new ArrayList<>();
        Placement.findOpposite(spines)
                .ifPresent(
                        half ->
                                half.legs()
                                        .reversed()
                                        .forEach(leg -> ids.add(tree.segment(leg).id())));
        spines.getFirst().legs().forEach(leg -> ids.add(tree.segment(leg).id()));
        return ids;
    }
}
