package org.loomwright.core.layout;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Rectangle;
import org.loomwright.core.geometry.Straight;
import org.loomwright.core.geometry.Tolerance;

/**
 * Decides whether two pieces of a drawing may lie as they do: nowhere nearer than the clearance, or nearer only as the way between
 * them along the loom is short.
 *
 * <p>Source: own derivation. The gap between a point of one piece and a point of the other is a convex function of the two places,
 * the allowed nearness min(clearance, share x way) a concave one, so their difference is convex and a search by thirds in both
 * places finds its least value. Two pieces that begin in one point obey exactly when they part at 15 degrees or more, for the gap
 * over the way is least at equal distances, where it is sin(angle/2).
 */
final class NearnessRule {

    /** Half the least angle in degrees between two pieces at one point. */
    private static final double HALF_ANGLE = 7.5;

    /** How much roomier a drawing is that pleases the eye. */
    private static final double COMFORT_ANGLE = 2;

    private static final double COMFORT_CLEARANCE = 1.6;
    private static final int THIRDS = 22;

    /** What a search by thirds counts, beside a first look. */
    private static final int CLOSE_LOOK = 40;

    private final LayoutTree tree;
    private final double perMm;
    private final double clearanceMm;
    private final double halfAngle;
    private final double share;
    private long cost;

    private NearnessRule(
            LayoutTree tree, double perMm, double clearanceMm, double halfAngleDegrees) {
        this.tree = tree;
        this.perMm = perMm;
        this.clearanceMm = clearanceMm;
        this.halfAngle = Math.toRadians(halfAngleDegrees);
        this.share = Math.sin(halfAngle);
    }

    /** What a drawing must obey. */
    static NearnessRule needed(LayoutTree tree, DrawingScale scale, double clearanceMm) {
        return new NearnessRule(tree, scale.onSheetMm(1.0), clearanceMm, HALF_ANGLE);
    }

    /** What it should rather obey: twice the angle, more clearance. */
    static NearnessRule comfortable(LayoutTree tree, DrawingScale scale, double clearanceMm) {
        return new NearnessRule(
                tree,
                scale.onSheetMm(1.0),
                clearanceMm * COMFORT_CLEARANCE,
                HALF_ANGLE * COMFORT_ANGLE);
    }

    double clearanceMm() {
        return clearanceMm;
    }

    /** Pieces farther apart than the clearance are always allowed. */
    boolean allows(Piece one, Piece other) {
        cost++;
        if (areFar(one.bounds(), other.bounds())
                || one.line().distanceToMm(other.line()) >= clearanceMm) {
            return true;
        }
        int meeting = tree.meeting(one.leg(), other.leg());
        if (meeting == one.leg() && meeting == other.leg()) {
            return one.depthMm() < other.depthMm() ? inRow(one, other) : inRow(other, one);
        }
        if (meeting == one.leg()) {
            return inRow(one, other);
        }
        return meeting == other.leg()
                ? inRow(other, one)
                : forked(one, other, tree.depthMm(meeting) * perMm);
    }

    /** Work done so far: about one for each pair looked at, more for a close one. */
    long cost() {
        return cost;
    }

    private boolean areFar(Rectangle a, Rectangle b) {
        return a.leftMm() - b.rightMm() >= clearanceMm
                || b.leftMm() - a.rightMm() >= clearanceMm
                || a.topMm() - b.bottomMm() >= clearanceMm
                || b.topMm() - a.bottomMm() >= clearanceMm;
    }

    /** The way to the second leads through the first. */
    private boolean inRow(Piece near, Piece far) {
        Straight back = new Straight(near.line().to(), near.line().from());
        return apart(back, far.line(), far.depthMm() - near.endDepthMm());
    }

    /** The ways to the two part at that depth. */
    private boolean forked(Piece one, Piece other, double partingMm) {
        return apart(one.line(), other.line(), one.depthMm() + other.depthMm() - 2 * partingMm);
    }

    /** Both lines given outward from where the loom joins them, with the way between their first points. */
    private boolean apart(Straight one, Straight other, double wayMm) {
        if (wayMm < Tolerance.LENGTH_MM * 10) {
            return angle(one, other) >= 2 * halfAngle - 1e-9;
        }
        if (share * wayMm >= clearanceMm) {
            return false;
        }
        cost += CLOSE_LOOK;
        return leastSlack(one, other, wayMm) >= -Tolerance.LENGTH_MM;
    }

    private static double angle(Straight one, Straight other) {
        double turn = Math.abs(heading(one) - heading(other));
        return Math.min(turn, 2 * Math.PI - turn);
    }

    private static double heading(Straight line) {
        return Math.atan2(line.to().yMm() - line.from().yMm(), line.to().xMm() - line.from().xMm());
    }

    private double leastSlack(Straight one, Straight other, double wayMm) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < THIRDS; i++) {
            double left = low + (high - low) / 3;
            double right = high - (high - low) / 3;
            double slackLeft = slackAt(one, left, other, wayMm);
            double slackRight = slackAt(one, right, other, wayMm);
            if (Math.min(slackLeft, slackRight) < -Tolerance.LENGTH_MM) {
                return Math.min(slackLeft, slackRight);
            }
            if (slackLeft < slackRight) {
                high = right;
            } else {
                low = left;
            }
        }
        return slackAt(one, (low + high) / 2, other, wayMm);
    }

    private double slackAt(Straight one, double part, Straight other, double wayMm) {
        Point place = one.at(part);
        double way = wayMm + part * one.lengthMm();
        double length = other.lengthMm();
        double low = 0;
        double high = 1;
        for (int i = 0; i < THIRDS; i++) {
            double left = low + (high - low) / 3;
            double right = high - (high - low) / 3;
            if (slack(place, other.at(left), way + left * length)
                    < slack(place, other.at(right), way + right * length)) {
                high = right;
            } else {
                low = left;
            }
        }
        double middle = (low + high) / 2;
        return slack(place, other.at(middle), way + middle * length);
    }

    private double slack(Point one, Point other, double wayMm) {
        return one.distanceToMm(other) - Math.min(clearanceMm, share * wayMm);
    }
}
