package org.loomwright.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A line through two or more points. Immutable and thread-safe; finding a place along it costs O(points).
 *
 * @param points in their order
 */
public record Polyline(List<Point> points) {

    public Polyline {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a line needs two points, has " + points.size());
        }
    }

    /** @return its straight pieces in their order */
    public List<Straight> pieces() {
        List<Straight> pieces = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            pieces.add(new Straight(points.get(i - 1), points.get(i)));
        }
        return pieces;
    }

    /** @return its length in millimetres */
    public double lengthMm() {
        return pieces().stream().mapToDouble(Straight::lengthMm).sum();
    }

    /**
     * @param alongMm distance along the line from its first point; less than nothing or more than all counts as the end
     * @return the point there
     */
    public Point atMm(double alongMm) {
        double left = alongMm;
        for (Straight piece : pieces()) {
            double length = piece.lengthMm();
            if (left <= length) {
                return length == 0 ? piece.from() : piece.at(Math.max(0, left / length));
            }
            left -= length;
        }
        return points.getLast();
    }

    /**
     * @param alongMm distance along the line from its first point
     * @return the straight piece at that place
     */
    public Straight pieceAtMm(double alongMm) {
        double left = alongMm;
        List<Straight> pieces = pieces();
        for (Straight piece : pieces) {
            left -= piece.lengthMm();
            if (left <= 0) {
                return piece;
            }
        }
        return pieces.getLast();
    }

    /**
     * @param fromMm distance along the line where to begin
     * @param toMm distance along the line where to stop, more than the first
     * @return that part of the line
     */
    public Polyline between(double fromMm, double toMm) {
        List<Point> part = new ArrayList<>();
        part.add(atMm(fromMm));
        double along = 0;
        for (Straight piece : pieces()) {
            along += piece.lengthMm();
            if (along > fromMm + Tolerance.LENGTH_MM && along < toMm - Tolerance.LENGTH_MM) {
                part.add(piece.to());
            }
        }
        part.add(atMm(toMm));
        return new Polyline(part);
    }
}
