package org.loomwright.core.layout;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.layout.SpineShape.Stretch;
import org.loomwright.core.loom.Departure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * The courses that a spine may take, the tidiest first: straight at the recorded angle, straight at a multiple of 15 degrees, with
 * one turn that lays it along the line it leaves, folded. The recorded side comes before the other one. The angles' order is our
 * own choice: a branch that leans onward looks tidiest.
 */
final class SpineShapes {

    private static final int[] ANGLES = {60, 45, 75, 90, 30, 105, 120, 135, 150, 15, 165};
    private static final int[] RISES = {2, 3, 5, 7, 10, 14, 19, 25, 32};
    private static final int[] LEANING = {90, 60, 45, 120};
    private static final double SMALLEST_ANGLE = 15;

    private final double widthMm;
    private final double heightMm;
    private final double clearanceMm;

    SpineShapes(double widthMm, double heightMm, double clearanceMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.clearanceMm = clearanceMm;
    }

    /** Courses of the trunk. */
    List<SpineShape> trunk(double lengthMm, boolean mayFold) {
        List<SpineShape> shapes = new ArrayList<>(List.of(SpineShape.straight(0)));
        if (mayFold) {
            for (int folds = 1; folds <= 12; folds++) {
                double step = Math.min(heightMm / (folds + 1.5), lengthMm / (folds + 1) / 2);
                double run = (lengthMm - folds * step) / (folds + 1);
                if (run > step && step >= clearanceMm) {
                    shapes.add(folded(folds, run, step, 0));
                }
            }
        }
        return shapes;
    }

    private static SpineShape folded(int folds, double run, double step, double firstHeading) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < folds; i++) {
            stretches.add(new Stretch(firstHeading + (i % 2 == 0 ? 0 : 180), run));
            stretches.add(new Stretch(firstHeading + 90, step));
        }
        stretches.add(new Stretch(firstHeading + (folds % 2 == 0 ? 0 : 180), 0));
        return new SpineShape(stretches);
    }

    /** Courses of a branch. */
    List<SpineShape> branch(@Nullable Departure leaves, int lighterSide, double lengthMm) {
        int recorded = side(leaves);
        int first = recorded == 0 ? lighterSide : recorded;
        LinkedHashSet<SpineShape> shapes = new LinkedHashSet<>();
        double wish = wish(leaves);
        if (recorded == 0) {
            addStraight(shapes, first, wish, true);
        } else {
            addStraight(shapes, first, wish, false);
            addTurned(shapes, first, lengthMm);
            addStraight(shapes, -first, wish, false);
        }
        addTurned(shapes, first, lengthMm);
        addTurned(shapes, -first, lengthMm);
        addFolded(shapes, first, lengthMm);
        addFolded(shapes, -first, lengthMm);
        return List.copyOf(shapes);
    }

    /** Clockwise of the line it leaves is 1, the other side -1, unknown 0. */
    private static int side(@Nullable Departure leaves) {
        if (leaves == null || leaves.clock() % 6 == 0) {
            return 0;
        }
        return leaves.clock() < 6 ? 1 : -1;
    }

    private static double wish(@Nullable Departure leaves) {
        return leaves == null || leaves.angleDegrees() < SMALLEST_ANGLE
                ? ANGLES[0]
                : leaves.angleDegrees();
    }

    private static void addStraight(
            LinkedHashSet<SpineShape> shapes, int side, double wish, boolean bothSides) {
        shapes.add(SpineShape.straight(side * wish));
        if (bothSides) {
            shapes.add(SpineShape.straight(-side * wish));
        }
        for (int angle : ANGLES) {
            shapes.add(SpineShape.straight(side * angle));
            if (bothSides) {
                shapes.add(SpineShape.straight(-side * angle));
            }
        }
    }

    private void addTurned(LinkedHashSet<SpineShape> shapes, int side, double lengthMm) {
        for (int rise : RISES) {
            double riseMm = rise * clearanceMm;
            if (riseMm > lengthMm - clearanceMm) {
                return;
            }
            for (int lean : LEANING) {
                for (int along : new int[] {0, 180, 90, 45, 135}) {
                    if (along != lean && Math.abs(along - lean) <= 135) {
                        shapes.add(
                                new SpineShape(
                                        List.of(
                                                new Stretch(side * lean, riseMm),
                                                new Stretch(side * along, 0))));
                    }
                }
            }
        }
    }

    private void addFolded(LinkedHashSet<SpineShape> shapes, int side, double lengthMm) {
        double step = 2 * clearanceMm;
        for (int rise : RISES) {
            for (int share = 2; share <= 4; share++) {
                double run = Math.min(widthMm, lengthMm) / share;
                int folds = (int) Math.ceil((lengthMm - rise * clearanceMm) / (run + step)) - 1;
                if (folds >= 1 && folds <= 12 && run > step) {
                    shapes.add(risenAndFolded(side, rise * clearanceMm, folds, run, step, 0));
                    shapes.add(risenAndFolded(side, rise * clearanceMm, folds, run, step, 180));
                }
            }
        }
    }

    private static SpineShape risenAndFolded(
            int side, double rise, int folds, double run, double step, int first) {
        List<Stretch> stretches = new ArrayList<>(List.of(new Stretch(side * 90, rise)));
        for (int i = 0; i < folds; i++) {
            stretches.add(new Stretch(first + (i % 2 == 0 ? 0 : 180), run));
            stretches.add(new Stretch(side * 90, step));
        }
        stretches.add(new Stretch(first + (folds % 2 == 0 ? 0 : 180), 0));
        return new SpineShape(stretches);
    }
}
