package org.loomwright.core.geometry.packing;

import java.util.Arrays;

/**
 * A square grid of circles already placed, to ask whether a new one would overlap and which ones are near it.
 *
 * <p>Cells are as wide as the largest circle; whatever lies beyond the rim counts to the outermost cells, so the answer
 * is right everywhere and fast near the origin.
 */
final class CellGrid {

    private static final double SLACK = 1e-9;

    private final double[] xs;
    private final double[] ys;
    private final double[] radii;
    private final int[] next;
    private final int[] head;
    private final int side;
    private final double cell;
    private int[] found = new int[64];

    CellGrid(double[] xs, double[] ys, double[] radii, double halfWidth, double largestRadius) {
        this.xs = xs;
        this.ys = ys;
        this.radii = radii;
        this.next = new int[radii.length];
        this.cell = Math.max(2.2 * largestRadius, 2 * halfWidth / 400);
        this.side = 2 * (int) Math.ceil(halfWidth / cell) + 1;
        this.head = new int[side * side];
        Arrays.fill(head, -1);
    }

    void add(int circle) {
        int at = cellOf(xs[circle]) * side + cellOf(ys[circle]);
        next[circle] = head[at];
        head[at] = circle;
    }

    private int cellOf(double coordinate) {
        return Math.clamp((int) Math.floor(coordinate / cell + side / 2.0), 0, side - 1);
    }

    boolean isFree(double x, double y, double radius) {
        int reach = 1;
        for (int c = Math.max(0, cellOf(x) - reach);
                c <= Math.min(side - 1, cellOf(x) + reach);
                c++) {
            for (int r = Math.max(0, cellOf(y) - reach);
                    r <= Math.min(side - 1, cellOf(y) + reach);
                    r++) {
                for (int j = head[c * side + r]; j >= 0; j = next[j]) {
                    if (isWithin(j, x, y, radius + radii[j] - SLACK)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private boolean isWithin(int j, double x, double y, double distance) {
        double dx = xs[j] - x;
        double dy = ys[j] - y;
        return dx * dx + dy * dy < distance * distance;
    }

    /** Circles that leave no room for a circle of twice {@code gap} between them and the given one; see count. */
    int[] near(int circle, double gap) {
        int size = 0;
        int reach = (int) Math.ceil((2 * radii[circle] + gap + cell) / cell);
        int column = cellOf(xs[circle]);
        int row = cellOf(ys[circle]);
        for (int c = Math.max(0, column - reach); c <= Math.min(side - 1, column + reach); c++) {
            for (int r = Math.max(0, row - reach); r <= Math.min(side - 1, row + reach); r++) {
                for (int j = head[c * side + r]; j >= 0; j = next[j]) {
                    if (j != circle
                            && isWithin(
                                    j, xs[circle], ys[circle], radii[circle] + radii[j] + gap)) {
                        if (size == found.length) {
                            found = Arrays.copyOf(found, 2 * size);
                        }
                        found[size++] = j;
                    }
                }
            }
        }
        return Arrays.copyOf(found, size);
    }
}
