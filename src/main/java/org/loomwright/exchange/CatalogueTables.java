package org.loomwright.exchange;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.loomwright.core.catalogue.Provenance;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables under {@code shared/catalogue} as they stand, so that a person can see where each figure comes from. */
public final class CatalogueTables {

    /** Every table; a test holds the list against the folder. */
    private static final List<String> NAMES =
            List.of(
                    "bundle-factors",
                    "colour-functions",
                    "colours",
                    "conductor-metals",
                    "conductor-resistances",
                    "conductor-sizes",
                    "coverings",
                    "current-rules",
                    "device-behaviours",
                    "device-terminals",
                    "drop-limits",
                    "electrical-settings",
                    "expectations",
                    "fuses",
                    "joints",
                    "look-alikes",
                    "opening-sizes",
                    "period-parts",
                    "places",
                    "relays",
                    "scenarios",
                    "services",
                    "supply-colours",
                    "terminal-substitutes",
                    "terminal-widths",
                    "terminals",
                    "typical-loads");

    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

    private CatalogueTables() {}

    /**
     * One table.
     *
     * @param name its name
     * @param note what is said above it
     * @param columns names of its columns
     * @param rows its rows: text of each cell by column
     */
    public record CatalogueTable(
            String name, String note, List<String> columns, List<Map<String, String>> rows) {

        public CatalogueTable {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        /** @return how many rows have a figure from memory */
        public long fromMemory() {
            String memory = Provenance.Status.MEMORY.name();
            return rows.stream().filter(row -> row.containsValue(memory)).count();
        }
    }

    /** @return names of all tables, in order */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * @param name of a table
     * @return the table, if there is one of that name
     */
    public static Optional<CatalogueTable> find(String name) {
        return NAMES.contains(name) ? Optional.of(read(name)) : Optional.empty();
    }

    private static CatalogueTable read(String name) {
        List<String> lines = lines(name);
        String note =
                lines.stream()
                        .takeWhile(line -> line.startsWith("#"))
                        .map(line -> line.substring(1).strip())
                        .reduce((one, two) -> one + " " + two)
                        .orElse("");
        String table =
                String.join("\n", lines.stream().dropWhile(it -> it.startsWith("#")).toList());
        try (CSVParser parser = CSVParser.parse(table, FORMAT)) {
            List<Map<String, String>> rows = new ArrayList<>();
            for (CSVRecord row : parser) {
                rows.add(new LinkedHashMap<>(row.toMap()));
            }
            return new CatalogueTable(name, note, parser.getHeaderNames(), rows);
        } catch (IOException e) {
            throw new UncheckedIOException("the table " + name + " cannot be read", e);
        }
    }

    private static List<String> lines(String name) {
        try (BufferedReader reader = new BufferedReader(TableSource.PRINTED.open(name + ".csv"))) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the table " + name + " cannot be read", e);
        }
    }
}
