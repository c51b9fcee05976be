package org.loomwright.core.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Things in the plane, kept by the square cells that they touch, so that a question about a place looks only at the things near it.
 * What lies outside the area is kept in the cells at its edge: nothing is lost, such questions only look at more.
 *
 * <p>Answers are exact, for the cells only choose whom to ask. Cost of a question: the cells that it touches and the things in them.
 * Not thread-safe.
 *
 * @param <T> what is kept
 */
public final class CellGrid<T> {

    private final Rectangle area;
    private final double cellMm;
    private final int columns;
    private final int rows;
    private final List<List<Entry<T>>> cells;
    private long question;
    private long looked;

    /** A thing, and the last question that it was asked: it lies in several cells. */
    private static final class Entry<T> {
        private final T thing;
        private long asked;

        Entry(T thing) {
            this.thing = thing;
        }
    }

    /**
     * @param area where most things lie
     * @param cellMm side of a cell, positive
     */
    public CellGrid(Rectangle area, double cellMm) {
        if (!(cellMm > 0)) {
            throw new IllegalArgumentException("a cell has a size, was " + cellMm);
        }
        this.area = area;
        this.cellMm = cellMm;
        this.columns = 1 + (int) (area.widthMm() / cellMm);
        this.rows = 1 + (int) (area.heightMm() / cellMm);
        this.cells = new ArrayList<>(columns * rows);
        for (int i = 0; i < columns * rows; i++) {
            cells.add(new ArrayList<>(0));
        }
    }

    /**
     * @param thing what to keep
     * @param bounds where it lies
     */
    public void add(T thing, Rectangle bounds) {
        Entry<T> entry = new Entry<>(thing);
        for (int column = column(bounds.leftMm()); column <= column(bounds.rightMm()); column++) {
            addTo(column, bounds.topMm(), bounds.bottomMm(), entry);
        }
    }

    /**
     * @param thing what to keep
     * @param line where it lies
     * @param reachMm how far it reaches to all sides of the line
     */
    public void add(T thing, Straight line, double reachMm) {
        Entry<T> entry = new Entry<>(thing);
        Rectangle bounds = Rectangle.around(line.from(), line.to()).grown(reachMm);
        for (int column = column(bounds.leftMm()); column <= column(bounds.rightMm()); column++) {
            Rectangle part = within(column, line, reachMm);
            addTo(column, part.topMm(), part.bottomMm(), entry);
        }
    }

    /**
     * @param where any rectangle
     * @param question what to ask the things near it, in no particular order, each once
     * @return whether one of them said yes
     */
    public boolean anyNear(Rectangle where, Predicate<? super T> question) {
        this.question++;
        for (int column = column(where.leftMm()); column <= column(where.rightMm()); column++) {
            if (asked(column, where.topMm(), where.bottomMm(), question)) {
                return true;
            }
        }
        return false;
    }

    /**
     * @param line any line
     * @param reachMm how far to look to all sides of it
     * @param question what to ask the things near it, in no particular order, each once
     * @return whether one of them said yes
     */
    public boolean anyNear(Straight line, double reachMm, Predicate<? super T> question) {
        this.question++;
        Rectangle bounds = Rectangle.around(line.from(), line.to()).grown(reachMm);
        for (int column = column(bounds.leftMm()); column <= column(bounds.rightMm()); column++) {
            Rectangle part = within(column, line, reachMm);
            if (asked(column, part.topMm(), part.bottomMm(), question)) {
                return true;
            }
        }
        return false;
    }

    /** @return how many cells were looked into and things asked so far: the work done, the same on every machine */
    public long looked() {
        return looked;
    }

    private void addTo(int column, double topMm, double bottomMm, Entry<T> entry) {
        for (int row = row(topMm); row <= row(bottomMm); row++) {
            cells.get(row * columns + column).add(entry);
        }
    }

    private boolean asked(
            int column, double topMm, double bottomMm, Predicate<? super T> predicate) {
        for (int row = row(topMm); row <= row(bottomMm); row++) {
            looked++;
            for (Entry<T> entry : cells.get(row * columns + column)) {
                if (entry.asked != question) {
                    entry.asked = question;
                    looked++;
                    if (predicate.test(entry.thing)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private int column(double xMm) {
        return (int) Math.clamp((xMm - area.leftMm()) / cellMm, 0, columns - 1.0);
    }

    private int row(double yMm) {
        return (int) Math.clamp((yMm - area.topMm()) / cellMm, 0, rows - 1.0);
    }

    /** Round the part of the line that can matter in a column; the columns at the edge have no outer side. */
    private Rectangle within(int column, Straight line, double reachMm) {
        double left = area.leftMm() + column * cellMm - reachMm - Tolerance.LENGTH_MM;
        double right = left + cellMm + 2 * (reachMm + Tolerance.LENGTH_MM);
        Point from = line.from();
        Point to = line.to();
        double dx = to.xMm() - from.xMm();
        if (Math.abs(dx) < Tolerance.LENGTH_MM) {
            return Rectangle.around(from, to).grown(reachMm);
        }
        double first = column == 0 ? (dx > 0 ? 0 : 1) : share(left, from, dx);
        double last = column == columns - 1 ? (dx > 0 ? 1 : 0) : share(right, from, dx);
        return Rectangle.around(line.at(first), line.at(last)).grown(reachMm);
    }

    private static double share(double xMm, Point from, double dx) {
        return Math.clamp((xMm - from.xMm()) / dx, 0, 1);
    }
}
