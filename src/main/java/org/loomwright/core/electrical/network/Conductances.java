package org.loomwright.core.electrical.network;

import java.util.Arrays;

/**
 * The conductance matrix of a net, put together from its branches in linear time: its entries are sorted by row and then, without
 * disturbing that, by column.
 */
final class Conductances {

    private static final int ENTRIES_OF_BRANCH = 4;

    private int[] rows;
    private int[] columns;
    private double[] values;
    private int count;

    private Conductances(int branches) {
        rows = new int[ENTRIES_OF_BRANCH * branches];
        columns = new int[rows.length];
        values = new double[rows.length];
    }

    /**
     * @param size how many unknowns there are
     * @param from for each branch the unknown where it begins, negative where it is none
     * @param to the one where it ends
     * @param siemens of each branch; both ends of an ideal one are the same unknown
     */
    static SymmetricMatrix of(int size, int[] from, int[] to, double[] siemens) {
        Conductances entries = new Conductances(siemens.length);
        for (int i = 0; i < siemens.length; i++) {
            if (from[i] != to[i]) {
                entries.stamp(from[i], to[i], siemens[i]);
            }
        }
        entries.sort(size, entries.rows);
        entries.sort(size, entries.columns);
        return entries.matrix(size);
    }

    private void stamp(int from, int to, double siemens) {
        if (from >= 0) {
            add(from, from, siemens);
        }
        if (to >= 0) {
            add(to, to, siemens);
        }
        if (from >= 0 && to >= 0) {
            add(from, to, -siemens);
            add(to, from, -siemens);
        }
    }

    private void add(int row, int column, double value) {
        rows[count] = row;
        columns[count] = column;
        values[count++] = value;
    }

    private static void addUp(int[] counts) {
        for (int i = 1; i < counts.length; i++) {
            counts[i] += counts[i - 1];
        }
    }

    /** By counting; what has the same key keeps its order. */
    private void sort(int size, int[] keys) {
        int[] next = new int[size + 1];
        for (int i = 0; i < count; i++) {
            next[keys[i] + 1]++;
        }
        addUp(next);
        int[] sortedRows = new int[count];
        int[] sortedColumns = new int[count];
        double[] sortedValues = new double[count];
        for (int i = 0; i < count; i++) {
            int at = next[keys[i]]++;
            sortedRows[at] = rows[i];
            sortedColumns[at] = columns[i];
            sortedValues[at] = values[i];
        }
        rows = sortedRows;
        columns = sortedColumns;
        values = sortedValues;
    }

    /** What stands in the same place is added up. */
    private SymmetricMatrix matrix(int size) {
        int[] starts = new int[size + 1];
        int at = -1;
        for (int i = 0; i < count; i++) {
            boolean isSame = i > 0 && rows[i] == rows[at] && columns[i] == columns[at];
            if (isSame) {
                values[at] += values[i];
            } else {
                at++;
                rows[at] = rows[i];
                columns[at] = columns[i];
                values[at] = values[i];
                starts[columns[i] + 1]++;
            }
        }
        addUp(starts);
        return new SymmetricMatrix(
                starts, Arrays.copyOf(rows, at + 1), Arrays.copyOf(values, at + 1));
    }
}
