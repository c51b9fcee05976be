package org.loomwright.exchange;

import org.apache.commons.csv.CSVRecord;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.electrical.check.current.CurrentRules;
import org.loomwright.core.electrical.check.current.DropLimit;
import org.loomwright.core.electrical.check.current.Sourced;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Temperature;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** Reads the limits of the checks of currents from the CSV files under {@code shared/catalogue} on the class path. */
public final class CurrentRuleFiles {

    private static final String RULES = "current-rules.csv";

    private final Map<String, Row> rows = new HashMap<>();

    private record Row(String rule, BigDecimal value, String unit, Provenance provenance) {}

    private CurrentRuleFiles(TableSource source) {
        CatalogueFiles.rows(source, RULES, CurrentRuleFiles::row)
                .forEach(row -> rows.put(row.rule(), row));
    }

    /**
     * @return the limits
     * @throws IllegalStateException if a file or a rule is missing or a row is wrong, naming file and row
     */
    public static CurrentRules load() {
        return load(TableSource.PRINTED);
    }

    static CurrentRules load(TableSource source) {
        CurrentRuleFiles files = new CurrentRuleFiles(source);
        return new CurrentRules(
                CurrentRules.byKind(
                        CatalogueFiles.rows(
                                source, "drop-limits.csv", CurrentRuleFiles::dropLimit)),
                files.get("insulation-hottest", "C", Temperature::ofCelsius),
                files.get("loaded-from", "ratio", Ratio::of),
                files.get("fuse-load", "ratio", Ratio::of),
                files.get("fuse-within-bare", "mm", Length::ofMillimetres),
                files.get("fuse-within-covered", "mm", Length::ofMillimetres),
                files.get("fuse-within-battery", "mm", Length::ofMillimetres),
                files.get("contact-growth", "ratio", Ratio::of));
    }

    private <T> Sourced<T> get(String rule, String unit, Function<BigDecimal, T> read) {
        Row row = rows.get(rule);
        if (row == null || !row.unit().equals(unit)) {
            throw new IllegalStateException(
                    "%s must have %s in the unit %s".formatted(RULES, rule, unit));
        }
        return new Sourced<>(read.apply(row.value()), row.provenance());
    }

    private static Row row(CSVRecord row) {
        return new Row(
                row.get("rule"),
                new BigDecimal(row.get("value")),
                row.get("unit"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static DropLimit dropLimit(CSVRecord row) {
        return new DropLimit(
                CircuitKind.valueOf(row.get("circuitKind").toUpperCase(Locale.ROOT)),
                percent(row, "limit"),
                percent(row, "aim"));
    }

    private static Sourced<Ratio> percent(CSVRecord row, String name) {
        return new Sourced<>(
                Ratio.of(new BigDecimal(row.get(name + "Percent")).movePointLeft(2)),
                CatalogueFiles.provenance(row, name + "Status", name + "Source"));
    }
}
