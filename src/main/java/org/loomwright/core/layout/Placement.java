package org.loomwright.core.layout;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Polyline;
import org.loomwright.core.geometry.Straight;
import org.loomwright.core.loom.Departure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One attempt to draw every spine, each at its tidiest course for which there is still room. */
final class Placement {

    /** A second half of the trunk is drawn opposite the first when it is at least this share of it. */
    private static final double OPPOSITE = 0.25;

    /** What laying a leg on trial counts, beside asking what lies near it. */
    private static final int LAYING = 10;

    private final LayoutTree tree;
    private final DrawingScale scale;
    private final NearnessRule needed;
    private final NearnessRule comfortable;
    private final Board board;
    private final SpineShapes shapes;
    private final boolean trunkMayFold;
    private final Polyline[] legs;
    private final Map<Integer, Double> sideLoad = new HashMap<>();
    private final long mostWork;
    private long laid;
    private @Nullable Spine opposite;

    Placement(LayoutTree tree, DrawingScale scale, Room room, boolean trunkMayFold, long mostWork) {
        this.tree = tree;
        this.scale = scale;
        this.needed = NearnessRule.needed(tree, scale, room.clearanceMm());
        this.comfortable = NearnessRule.comfortable(tree, scale, room.clearanceMm());
        this.board = new Board(room.widthMm(), room.heightMm());
        this.shapes = new SpineShapes(room.widthMm(), room.heightMm(), room.clearanceMm());
        this.trunkMayFold = trunkMayFold;
        this.mostWork = mostWork;
        this.legs = new Polyline[tree.size()];
    }

    /** Room on the sheet in millimetres. */
    record Room(double widthMm, double heightMm, double clearanceMm) {}

    /**
     * @return the first spine for which there was no room or no work left, null when all are drawn
     */
    @Nullable Spine drawAll(List<Spine> spines) {
        opposite = findOpposite(spines).orElse(null);
        for (Spine spine : spines) {
            if (!draw(spine)) {
                return spine;
            }
        }
        return null;
    }

    /** The other half of the trunk, where the datum stands in its middle. */
    static Optional<Spine> findOpposite(List<Spine> spines) {
        Spine trunk = spines.getFirst();
        return spines.stream()
                .skip(1)
                .filter(spine -> spine.hungOn() == LayoutTree.DATUM)
                .findFirst()
                .filter(spine -> spine.lengthMm() >= OPPOSITE * trunk.lengthMm());
    }

    private boolean draw(Spine spine) {
        double length = scale.onSheetMm(spine.lengthMm());
        Point start = spine.hungOn() == LayoutTree.DATUM ? Point.ORIGIN : end(spine.hungOn());
        double base = spine.hungOn() == LayoutTree.DATUM ? 0 : arriving(spine.hungOn());
        List<SpineShape> courses = courses(spine, length);
        for (SpineShape shape : courses) {
            if (shape.isStraight() && lay(spine, shape.from(start, base, length), comfortable)) {
                noteSide(spine, shape);
                return true;
            }
        }
        for (SpineShape shape : courses) {
            if (shape.fixedMm() < length - 1
                    && lay(spine, shape.from(start, base, length), needed)) {
                noteSide(spine, shape);
                return true;
            }
        }
        return false;
    }

    private List<SpineShape> courses(Spine spine, double lengthMm) {
        boolean first = tree.segment(spine.first()).from().equals(tree.segment(0).from());
        if (first && board.isEmpty()) {
            return shapes.trunk(lengthMm, trunkMayFold);
        }
        Departure leaves = tree.departure(spine.first());
        double load = sideLoad.getOrDefault(spine.hungOn(), sideLoad.getOrDefault(-2, 0.0));
        List<SpineShape> branch = shapes.branch(leaves, load > 0 ? -1 : 1, lengthMm);
        if (!spine.equals(opposite)) {
            return branch;
        }
        List<SpineShape> all = new ArrayList<>(List.of(SpineShape.straight(180)));
        all.addAll(branch);
        return all;
    }

    private void noteSide(Spine spine, SpineShape shape) {
        double side =
                Math.signum(
                        Math.sin(Math.toRadians(shape.stretches().getFirst().headingDegrees())));
        sideLoad.merge(-2, side * spine.beyondMm(), Double::sum);
        sideLoad.merge(spine.hungOn(), side * spine.beyondMm(), Double::sum);
    }

    private Point end(int leg) {
        return legs[leg].points().getLast();
    }

    private double arriving(int leg) {
        Straight last = legs[leg].pieces().getLast();
        double heading =
                Math.toDegrees(
                        Math.atan2(
                                last.to().yMm() - last.from().yMm(),
                                last.to().xMm() - last.from().xMm()));
        return Math.rint(heading * 1e6) / 1e6;
    }

    private boolean lay(Spine spine, Polyline course, NearnessRule rule) {
        if (cost() > mostWork) {
            return false;
        }
        List<Piece> pieces = new ArrayList<>();
        List<Polyline> parts = new ArrayList<>();
        double depth = scale.onSheetMm(tree.depthMm(spine.hungOn()));
        double along = 0;
        for (int leg : spine.legs()) {
            double length = scale.onSheetMm(tree.lengthMm(leg));
            Polyline part = course.between(along, along + length);
            double at = depth + along;
            for (Straight line : part.pieces()) {
                pieces.add(new Piece(line, leg, at));
                at += line.lengthMm();
            }
            parts.add(part);
            laid += LAYING;
            along += length;
        }
        if (!board.takes(pieces, rule)) {
            return false;
        }
        for (int i = 0; i < parts.size(); i++) {
            legs[spine.legs().get(i)] = parts.get(i);
        }
        return true;
    }

    /** Work done so far. */
    long cost() {
        return needed.cost() + comfortable.cost() + board.looked() + laid;
    }

    /** The legs by number; complete when everything was drawn. */
    List<Polyline> legs() {
        return List.of(legs);
    }
}
