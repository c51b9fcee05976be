package org.loomwright.exchange;

import org.apache.commons.csv.CSVRecord;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.open.Expectation;
import org.loomwright.core.open.Expectation.Need;
import org.loomwright.core.open.Expectations;
import org.loomwright.core.quantity.Length;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads what services need from the CSV files under {@code shared/catalogue} on the class path. */
public final class ExpectationFiles {

    private static final String EXPECTATIONS = "expectations.csv";
    private static final String WIDTHS = "terminal-widths.csv";

    private ExpectationFiles() {}

    /**
     * @param catalogue the services and terminals that the rows name
     * @return the tables
     * @throws IllegalStateException if a file is missing or a row is wrong, naming file and row
     * @throws IllegalArgumentException if a row names what the catalogue does not have, or stands twice
     */
    public static Expectations load(Catalogue catalogue) {
        return new Expectations(
                catalogue,
                CatalogueFiles.rows(EXPECTATIONS, ExpectationFiles::expectation),
                widths());
    }

    private static Map<String, Length> widths() {
        Map<String, Length> widths = new LinkedHashMap<>();
        CatalogueFiles.rows(WIDTHS, ExpectationFiles::width).forEach(widths::putAll);
        return widths;
    }

    private static Map<String, Length> width(CSVRecord row) {
        CatalogueFiles.provenance(row, "status", "source");
        return Map.of(
                row.get("terminal"), Length.ofMillimetres(new BigDecimal(row.get("acrossMm"))));
    }

    static Expectation expectation(CSVRecord row) {
        return new Expectation(
                row.get("service"),
                kinds(row.get("kinds")),
                Need.valueOf(constant(row.get("need"))),
                Integer.parseInt(row.get("from")),
                words(row.get("unless")),
                required(row.get("why")),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    static Set<DeviceKind> kinds(String text) {
        Function<String, DeviceKind> kind = word -> DeviceKind.valueOf(constant(word));
        return words(text).stream().map(kind).collect(Collectors.toUnmodifiableSet());
    }

    static List<String> words(String text) {
        return text.isEmpty() ? List.of() : Arrays.asList(text.split("\\|"));
    }

    static String constant(String text) {
        return text.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    static String required(String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a text is empty");
        }
        return text;
    }
}
