package org.loomwright.core.electrical;

import org.loomwright.testing.ReferenceTable;

/**
 * A figure that its source prints wrong.
 *
 * @param name of the case
 * @param printed what stands there
 * @param right what the source's own formula gives
 * @param tolerance of the right figure
 */
record Misprint(String name, double printed, double right, double tolerance) {

    static Misprint of(String name) {
        return ReferenceTable.rows(
                        "electrical/misprints.csv",
                        row ->
                                new Misprint(
                                        row.get("case"),
                                        Double.parseDouble(row.get("printed")),
                                        Double.parseDouble(row.get("right")),
                                        Double.parseDouble(row.get("tolerance"))))
                .stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
