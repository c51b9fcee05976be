package org.loomwright.exchange;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.Covering;
import org.loomwright.core.catalogue.OpeningKind;
import org.loomwright.core.catalogue.OpeningSize;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.catalogue.TerminalType;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Reads the catalogue from the CSV files under {@code shared/catalogue} on the class path. */
public final class CatalogueFiles {

    static final String FOLDER = "/shared/catalogue/";
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .setIgnoreSurroundingSpaces(true)
                    .get();

    private CatalogueFiles() {}

    /**
     * @return the catalogue
     * @throws IllegalStateException if a file is missing or a row is wrong, naming file and row
     */
    public static Catalogue load() {
        return load(TableSource.PRINTED);
    }

    static Catalogue load(TableSource source) {
        return new Catalogue(
                rows(source, "colours.csv", CatalogueFiles::colour),
                rows(source, "conductor-sizes.csv", CatalogueFiles::size),
                rows(source, "coverings.csv", CatalogueFiles::covering),
                rows(source, "terminals.csv", CatalogueFiles::terminal),
                rows(source, "opening-sizes.csv", CatalogueFiles::openingSize),
                rows(source, "services.csv", CatalogueFiles::service),
                PartFiles.load(source));
    }

    static <T> List<T> rows(String file, Function<CSVRecord, T> row) {
        return rows(TableSource.PRINTED, file, row);
    }

    static <T> List<T> rows(TableSource source, String file, Function<CSVRecord, T> row) {
        return rows(file, source.open(file), row);
    }

    /** Reads one table and closes the reader. */
    static <T> List<T> rows(String file, Reader source, Function<CSVRecord, T> row) {
        try (source;
                CSVParser parser = FORMAT.parse(source)) {
            return parser.stream().map(record -> read(file, record, row)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the table " + FOLDER + file + " cannot be read", e);
        }
    }

    private static <T> T read(String file, CSVRecord record, Function<CSVRecord, T> row) {
        try {
            return row.apply(record);
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw new IllegalStateException(
                    "row %d of %s%s is wrong: %s"
                            .formatted(record.getRecordNumber(), FOLDER, file, e.getMessage()),
                    e);
        }
    }

    private static BaseColour colour(CSVRecord row) {
        return new BaseColour(
                row.get("letters"),
                row.get("name"),
                row.get("supply"),
                row.get("swatch"),
                provenance(row, "status", "source"));
    }

    private static ConductorSize size(CSVRecord row) {
        return new ConductorSize(
                row.get("designation"),
                CrossSection.ofSquareMillimetres(new BigDecimal(row.get("metalMm2"))),
                millimetres(row, "outsideDiameterMm"),
                Current.ofAmperes(new BigDecimal(row.get("ratingA"))),
                provenance(row, "diameterStatus", "diameterSource"),
                provenance(row, "ratingStatus", "ratingSource"));
    }

    private static Covering covering(CSVRecord row) {
        return new Covering(
                row.get("code"),
                row.get("name"),
                millimetres(row, "wallMm"),
                Boolean.parseBoolean(row.get("woven")),
                provenance(row, "status", "source"));
    }

    private static TerminalType terminal(CSVRecord row) {
        return new TerminalType(
                row.get("code"),
                row.get("name"),
                millimetres(row, "stripMm"),
                millimetres(row, "allowanceMm"),
                millimetres(row, "renewalMm"),
                findArea(row, "leastMm2"),
                findArea(row, "mostMm2"),
                PartFiles.findAmperes(row, "currentA"),
                PartFiles.truth(row, "ofPeriod"),
                provenance(row, "status", "source"));
    }

    private static OpeningSize openingSize(CSVRecord row) {
        return new OpeningSize(
                OpeningKind.valueOf(row.get("kind").toUpperCase(Locale.ROOT)),
                millimetres(row, "clearDiameterMm"),
                provenance(row, "status", "source"));
    }

    private static Service service(CSVRecord row) {
        return new Service(
                row.get("code"),
                row.get("name"),
                List.of(row.get("words").split("\\|")),
                Service.CircuitKind.valueOf(row.get("kind").toUpperCase(Locale.ROOT)),
                provenance(row, "status", "source"));
    }

    private static @Nullable CrossSection findArea(CSVRecord row, String column) {
        String text = row.get(column);
        return text.isEmpty() ? null : CrossSection.ofSquareMillimetres(new BigDecimal(text));
    }

    private static Length millimetres(CSVRecord row, String column) {
        return Length.ofMillimetres(new BigDecimal(row.get(column)));
    }

    static Provenance provenance(CSVRecord row, String status, String source) {
        return new Provenance(Provenance.Status.valueOf(row.get(status)), row.get(source));
    }
}
