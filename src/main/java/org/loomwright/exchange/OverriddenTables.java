package org.loomwright.exchange;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.loomwright.core.catalogue.CatalogueOverride;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.exchange.CatalogueTables.CatalogueTable;
import org.loomwright.exchange.FigureTable.Figure;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The printed tables with a workshop's own figures written over others; each says so in its status. */
final class OverriddenTables implements TableSource {

    private static final String ENDING = ".csv";

    private final List<CatalogueOverride> overrides;

    OverriddenTables(List<CatalogueOverride> overrides) {
        this.overrides = List.copyOf(overrides);
    }

    @Override
    public Reader open(String file) {
        String name = file.substring(0, file.length() - ENDING.length());
        List<CatalogueOverride> own =
                overrides.stream().filter(override -> override.table().equals(name)).toList();
        return own.isEmpty()
                ? PRINTED.open(file)
                : overwritten(FigureTable.find(name).orElseThrow(), own);
    }

    private static Reader overwritten(FigureTable table, List<CatalogueOverride> own) {
        CatalogueTable printed = CatalogueTables.find(table.table()).orElseThrow();
        StringWriter text = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.DEFAULT)) {
            printer.printRecord(printed.columns());
            for (Map<String, String> row : printed.rows()) {
                printer.printRecord(overwritten(table, row, own).values());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot be written", e);
        }
        return new StringReader(text.toString());
    }

    private static Map<String, String> overwritten(
            FigureTable table, Map<String, String> printed, List<CatalogueOverride> all) {
        String name = table.nameOf(printed);
        List<CatalogueOverride> own =
                all.stream().filter(override -> override.row().equals(name)).toList();
        Map<String, String> row = new LinkedHashMap<>(printed);
        for (CatalogueOverride override : own) {
            Figure figure = table.findFigure(override.column()).orElseThrow();
            row.put(figure.column(), override.value());
            row.put(figure.status(), Status.WORKSHOP.name());
            row.put(figure.source(), source(table, figure, printed, own));
        }
        return row;
    }

    /** Where one source speaks for several figures, it tells which of them the workshop did not set. */
    private static String source(
            FigureTable table,
            Figure figure,
            Map<String, String> printed,
            List<CatalogueOverride> own) {
        List<String> told =
                table.figures().stream()
                        .filter(other -> other.source().equals(figure.source()))
                        .map(Figure::column)
                        .filter(column -> !printed.getOrDefault(column, "").isEmpty())
                        .toList();
        if (told.size() == 1) {
            return own.stream()
                    .filter(override -> override.column().equals(figure.column()))
                    .map(CatalogueOverride::note)
                    .collect(Collectors.joining());
        }
        List<String> notes =
                own.stream()
                        .filter(override -> told.contains(override.column()))
                        .map(override -> override.column() + " " + override.note())
                        .collect(Collectors.toCollection(ArrayList::new));
        if (notes.size() < told.size()) {
            Status old = Status.valueOf(printed.getOrDefault(figure.status(), ""));
            notes.add(
                    "the rest %s: %s"
                            .formatted(old.words(), printed.getOrDefault(figure.source(), "")));
        }
        return String.join("; ", notes);
    }
}
