package org.loomwright.document.pdf;

import org.loomwright.document.pdf.Cell.Align;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A table as an author writes it: columns with headings, and rows. {@link Flow} sets it. */
public final class Table {

    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();

    /**
     * @param columns its columns from left to right
     */
    public Table(List<Column> columns) {
        this.columns = List.copyOf(columns);
    }

    /**
     * One column.
     *
     * @param heading its heading; a line feed breaks the line
     * @param share its part of the whole width
     * @param align how its heading stands
     */
    public record Column(String heading, double share, Align align) {

        /** @return a column of words */
        public static Column words(String heading, double share) {
            return new Column(heading, share, Align.LEFT);
        }

        /** @return a column of figures */
        public static Column figures(String heading, double share) {
            return new Column(heading, share, Align.RIGHT);
        }
    }

    /** What a row is to its neighbours. */
    public enum Look {
        /** One of many. */
        PLAIN,
        /** Over the whole width; heads the rows that follow and is never parted from the first of them. */
        GROUP,
        /** Sums up the rows above and is never parted from the last of them. */
        TOTAL,
        /** Over the whole width; belongs to the row above and is not parted from it. */
        UNDER
    }

    /**
     * One row.
     *
     * @param cells its fields: one a column; where it runs over the whole width, one or two that share it
     * @param look what it is to its neighbours
     */
    public record Row(List<Cell> cells, Look look) {

        public Row {
            cells = List.copyOf(cells);
        }

        boolean isWide() {
            return look == Look.GROUP || look == Look.UNDER;
        }

        boolean belongsToTheRowAbove() {
            return look == Look.TOTAL || look == Look.UNDER;
        }
    }

    /** Adds a plain row. */
    public Table row(Cell... cells) {
        return add(Look.PLAIN, cells);
    }

    /** Adds a row over the whole width that heads the following ones; a second cell stands at its right end. */
    public Table group(Cell... cells) {
        return add(Look.GROUP, cells);
    }

    /** Adds a row over the whole width that belongs to the one above. */
    public Table under(Cell cell) {
        return add(Look.UNDER, cell);
    }

    /** Adds a row that sums up. */
    public Table total(Cell... cells) {
        return add(Look.TOTAL, cells);
    }

    private Table add(Look look, Cell... cells) {
        Row row = new Row(List.of(cells), look);
        if (!row.isWide() && cells.length != columns.size()) {
            throw new IllegalArgumentException(
                    "a row needs %d cells, has %d".formatted(columns.size(), cells.length));
        }
        rows.add(row);
        return this;
    }

    List<Column> columns() {
        return columns;
    }

    List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }
}
