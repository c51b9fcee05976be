package org.loomwright.core.electrical.network;

/**
 * A sparse symmetric positive definite matrix, both triangles stored column by column with rising rows. Its rows are already in an
 * order that suits elimination: without fill for a tree.
 *
 * <p>Immutable by agreement: the arrays are handed out as they are, because copying them costs as much as solving. A solver must not
 * write into them.
 */
public final class SymmetricMatrix {

    private final int[] columnStarts;
    private final int[] rows;
    private final double[] values;

    SymmetricMatrix(int[] columnStarts, int[] rows, double[] values) {
        this.columnStarts = columnStarts;
        this.rows = rows;
        this.values = values;
    }

    /** @return how many rows and columns it has */
    public int size() {
        return columnStarts.length - 1;
    }

    /** @return where each column begins in {@link #rows} and {@link #values}, and one entry more for the end */
    public int[] columnStarts() {
        return columnStarts;
    }

    /** @return row of each entry */
    public int[] rows() {
        return rows;
    }

    /** @return value of each entry */
    public double[] values() {
        return values;
    }

    /** Right side minus matrix times x. */
    double[] residual(double[] right, double[] x) {
        double[] residual = right.clone();
        for (int column = 0; column < size(); column++) {
            for (int at = columnStarts[column]; at < columnStarts[column + 1]; at++) {
                residual[rows[at]] -= values[at] * x[column];
            }
        }
        return residual;
    }
}
