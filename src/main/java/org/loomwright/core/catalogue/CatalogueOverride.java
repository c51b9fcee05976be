package org.loomwright.core.catalogue;

/**
 * A workshop's own figure in the place of one that nobody has read in a publication.
 *
 * @param table name of the table, for example {@code conductor-sizes}
 * @param row what its row is called, for example {@code 14/.012}
 * @param column name of the column that holds the figure, with its unit, for example {@code outsideDiameterMm}
 * @param value the workshop's figure as it was written, for example {@code 2.6}
 * @param note where the workshop has it from, for example {@code measured on our reel}
 */
public record CatalogueOverride(
        String table, String row, String column, String value, String note) {

    /** @return which figure it replaces, in words, for example {@code outsideDiameterMm of 14/.012} */
    public String words() {
        return column + " of " + row;
    }

    /** @return whether both replace the same figure */
    public boolean isOfSameFigureAs(CatalogueOverride other) {
        return table.equals(other.table) && row.equals(other.row) && column.equals(other.column);
    }
}
