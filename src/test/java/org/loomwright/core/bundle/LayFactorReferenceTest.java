package org.loomwright.core.bundle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.testing.ReferenceTable;

import java.util.List;

/** Works the default lay factor out again from the published tables. */
class LayFactorReferenceTest {

    private record Row(int cores, double factor) {}

    private final List<Row> rows =
            ReferenceTable.rows(
                    "lay-up-factors.csv",
                    row ->
                            new Row(
                                    Integer.parseInt(row.get("n")),
                                    Double.parseDouble(row.get("k"))
                                            / Double.parseDouble(row.get("bestKnown"))));

    @Test
    void theDefaultIsTheMedianFromSevenCoresOn() {
        List<Double> factors =
                rows.stream().filter(row -> row.cores() >= 7).map(Row::factor).sorted().toList();
        assertThat(factors).hasSize(21);
        assertThat(LayFactor.PUBLISHED.fromSeven().toDouble())
                .isCloseTo(factors.get(factors.size() / 2), within(0.5e-4));
    }

    @Test
    void upToSixCoresTheTwoTablesAgreeWithinTheRoundingOfK() {
        assertThat(rows)
                .filteredOn(row -> row.cores() < 7)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.factor()).isCloseTo(1, within(0.005 / 2)));
        assertThat(LayFactor.PUBLISHED.forWires(6)).isEqualTo(Ratio.ONE);
    }
}
