package org.loomwright.core.layout;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Polyline;

import java.util.ArrayList;
import java.util.List;

/**
 * The course of a spine: stretches one after the other, the last one as long as the spine needs it.
 *
 * @param stretches each with its heading relative to the line that the spine leaves, clockwise on the sheet, in degrees
 */
record SpineShape(List<Stretch> stretches) {

    /** A straight part of the course; the length of the last one does not count. */
    record Stretch(double headingDegrees, double lengthMm) {}

    SpineShape {
        stretches = List.copyOf(stretches);
    }

    static SpineShape straight(double headingDegrees) {
        return new SpineShape(List.of(new Stretch(headingDegrees, 0)));
    }

    /** Length on the sheet before the last stretch. */
    double fixedMm() {
        return stretches.subList(0, stretches.size() - 1).stream()
                .mapToDouble(Stretch::lengthMm)
                .sum();
    }

    /** The course on the sheet. */
    Polyline from(Point start, double baseDegrees, double lengthMm) {
        List<Point> points = new ArrayList<>(List.of(start));
        double left = lengthMm;
        for (int i = 0; i < stretches.size(); i++) {
            boolean last = i == stretches.size() - 1;
            double length = last ? left : stretches.get(i).lengthMm();
            left -= length;
            double heading = Math.toRadians(baseDegrees + stretches.get(i).headingDegrees());
            Point at = points.getLast();
            points.add(
                    new Point(
                            at.xMm() + length * Math.cos(heading),
                            at.yMm() + length * Math.sin(heading)));
        }
        return new Polyline(points);
    }

    boolean isStraight() {
        return stretches.size() == 1;
    }
}
