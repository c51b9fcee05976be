package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.catalogue.TypicalLoad;
import org.loomwright.testing.ReferenceTable;
import org.loomwright.testing.TestCatalogue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Usual loads against what is printed; origin and status stand in the case file. */
class TypicalLoadsReferenceTest {

    private record Printed(String circuit, String value, Provenance provenance) {}

    private final List<Printed> printed =
            ReferenceTable.rows("electrical/typical-loads.csv", TypicalLoadsReferenceTest::printed);

    private final Map<String, List<TypicalLoad>> loads =
            TestCatalogue.get().parts().loads().stream()
                    .collect(Collectors.groupingBy(TypicalLoad::circuit));

    private static Printed printed(CSVRecord row) {
        return new Printed(
                row.get("circuit"),
                row.get("value"),
                new Provenance(Status.valueOf(row.get("status")), row.get("source")));
    }

    @Test
    void everyPrintedCircuitIsInTheTableAndNoOther() {
        assertThat(loads.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        printed.stream().map(Printed::circuit).toList());
    }

    @Test
    void everyFigureIsThePrintedOneWithItsUnitAndSource() {
        for (Printed row : printed) {
            String unit = row.value().endsWith(" W") ? "WATTS" : "AMPERES";
            assertThat(loads.getOrDefault(row.circuit(), List.of()))
                    .as(row.circuit())
                    .isNotEmpty()
                    .allSatisfy(
                            load -> {
                                assertThat(load.printed()).isEqualTo(row.value());
                                assertThat(load.unit()).hasToString(unit);
                                assertThat(load.provenance()).isEqualTo(row.provenance());
                            });
            assertThat(figuresOf(row.circuit())).as(row.circuit()).isEqualTo(figures(row.value()));
        }
    }

    /** "6-10 A" is one range, "50/45 W" are two filaments: in both cases two figures. */
    private static List<BigDecimal> figures(String text) {
        return Arrays.stream(text.substring(0, text.length() - 2).split("[-/]"))
                .map(BigDecimal::new)
                .sorted()
                .toList();
    }

    private List<BigDecimal> figuresOf(String circuit) {
        return loads.getOrDefault(circuit, List.of()).stream()
                .flatMap(load -> List.of(load.low(), load.high()).stream())
                .distinct()
                .sorted()
                .toList();
    }

    @Test
    void aPairIsTwoPiecesAndARangeIsOneRow() {
        for (Printed row : printed) {
            List<TypicalLoad> rows = loads.getOrDefault(row.circuit(), List.of());
            assertThat(rows).as(row.circuit()).hasSize(row.value().contains("/") ? 2 : 1);
            if (row.circuit().contains("pair")) {
                assertThat(rows.getFirst().pieces()).as(row.circuit()).isEqualTo(2);
            }
        }
    }
}
