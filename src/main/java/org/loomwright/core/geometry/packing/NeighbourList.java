package org.loomwright.core.geometry.packing;

import java.util.Arrays;

/**
 * Which pairs of circles can touch before the next rebuild: every pair nearer than touching plus a skin.
 *
 * <p>The list stays right until some circle has moved half the skin since it was built; {@link #refresh} checks this and
 * rebuilds, with a square grid when there are many circles. Radii come sorted, largest first. Cost of a rebuild: all pairs for few circles, near linear
 * for many of similar size. Not thread safe.
 *
 * <p>Source: L. Verlet, "Computer experiments on classical fluids", 1967 (the skin).
 */
final class NeighbourList {

    private static final int GRID_FROM = 160;
    private static final double SKIN = 0.3;
    private static final double BULKY = 3;
    private static final int MOST_BULKY = 64;

    private final double[] radii;
    private final int count;
    private final int bulky;
    private final double cellSize;
    private final int[] start;
    private final double[] builtAt;
    private int[] other;
    private boolean built;
    private int[] cellHead = new int[0];
    private final int[] nextInCell;

    NeighbourList(double[] radii) {
        this.radii = radii;
        this.count = radii.length;
        this.bulky = countBulky(radii);
        this.cellSize = 2 * radii[Math.min(bulky, count - 1)] + SKIN;
        this.start = new int[count + 1];
        this.builtAt = new double[2 * count];
        this.other = new int[8 * count + 16];
        this.nextInCell = new int[count];
    }

    private static int countBulky(double[] radii) {
        int bulky = 0;
        while (bulky < Math.min(MOST_BULKY, radii.length) && radii[bulky] > BULKY) {
            bulky++;
        }
        return bulky;
    }

    int[] starts() {
        return start;
    }

    int[] others() {
        return other;
    }

    /** Brings the list up to date and returns the pairs looked at (0 when nothing had to be done). */
    long refresh(double[] z) {
        if (built && !movedTooFar(z)) {
            return 0;
        }
        System.arraycopy(z, 0, builtAt, 0, 2 * count);
        built = true;
        return count < GRID_FROM ? buildFromAllPairs() : buildFromGrid();
    }

    private boolean movedTooFar(double[] z) {
        double limit = SKIN * SKIN / 4;
        for (int i = 0; i < count; i++) {
            double dx = z[i] - builtAt[i];
            double dy = z[count + i] - builtAt[count + i];
            if (dx * dx + dy * dy > limit) {
                return true;
            }
        }
        return false;
    }

    private long buildFromAllPairs() {
        int size = 0;
        for (int i = 0; i < count; i++) {
            start[i] = size;
            size = collectAfter(i, size);
        }
        start[count] = size;
        return (long) count * count / 2;
    }

    private int collectAfter(int i, int from) {
        int size = from;
        reserve(size + count);
        for (int j = i + 1; j < count; j++) {
            if (near(i, j)) {
                other[size++] = j;
            }
        }
        return size;
    }

    private boolean near(int i, int j) {
        double dx = builtAt[i] - builtAt[j];
        double dy = builtAt[count + i] - builtAt[count + j];
        double reach = radii[i] + radii[j] + SKIN;
        return dx * dx + dy * dy < reach * reach;
    }

    private void reserve(int size) {
        if (size > other.length) {
            other = Arrays.copyOf(other, Math.max(size, 2 * other.length));
        }
    }

    private long buildFromGrid() {
        double low = Arrays.stream(builtAt).min().orElse(0);
        double high = Arrays.stream(builtAt).max().orElse(0);
        double cell = Math.max(cellSize, (high - low) / (2 * Math.sqrt(count)));
        int side = (int) ((high - low) / cell) + 1;
        fillCells(low, cell, side);
        int size = 0;
        for (int i = 0; i < count; i++) {
            start[i] = size;
            size =
                    i < bulky
                            ? collectAfter(i, size)
                            : collect(
                                    i,
                                    size,
                                    cellOf(builtAt[i], low, cell),
                                    cellOf(builtAt[count + i], low, cell),
                                    side);
        }
        start[count] = size;
        return (20L + bulky) * count;
    }

    /** Sorts all but the bulky circles into cells; the bulky ones are compared with everything. */
    private void fillCells(double low, double cell, int side) {
        if (cellHead.length < side * side) {
            cellHead = new int[side * side];
        }
        Arrays.fill(cellHead, 0, side * side, -1);
        for (int i = bulky; i < count; i++) {
            int at = cellOf(builtAt[i], low, cell) * side + cellOf(builtAt[count + i], low, cell);
            nextInCell[i] = cellHead[at];
            cellHead[at] = i;
        }
    }

    private static int cellOf(double coordinate, double low, double cell) {
        return (int) ((coordinate - low) / cell);
    }

    private int collect(int i, int from, int column, int row, int side) {
        int size = from;
        for (int c = Math.max(0, column - 1); c <= Math.min(side - 1, column + 1); c++) {
            for (int r = Math.max(0, row - 1); r <= Math.min(side - 1, row + 1); r++) {
                for (int j = cellHead[c * side + r]; j >= 0; j = nextInCell[j]) {
                    if (j > i && near(i, j)) {
                        reserve(size + 1);
                        other[size++] = j;
                    }
                }
            }
        }
        return size;
    }
}
