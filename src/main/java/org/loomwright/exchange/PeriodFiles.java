package org.loomwright.exchange;

import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.FuseRating.FuseStyle;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.period.PeriodPart;
import org.loomwright.core.period.PeriodPart.Kind;
import org.loomwright.core.period.PeriodPart.Seen;
import org.loomwright.core.period.PeriodTables;
import org.loomwright.core.period.Place;

/** Reads when parts were usual, and what can be seen where, from the CSV files under {@code shared/catalogue} on the class path. */
public final class PeriodFiles {

    private static final String PARTS = "period-parts.csv";
    private static final String PLACES = "places.csv";

    private PeriodFiles() {}

    /**
     * @param catalogue the coverings, sizes and terminals that the rows name
     * @return the tables
     * @throws IllegalStateException if a file is missing or a row is wrong, naming file and row
     * @throws IllegalArgumentException if a row names what the catalogue does not have, or stands twice
     */
    public static PeriodTables load(Catalogue catalogue) {
        return new PeriodTables(
                catalogue,
                CatalogueFiles.rows(PARTS, PeriodFiles::part),
                CatalogueFiles.rows(PLACES, PeriodFiles::place));
    }

    static PeriodPart part(CSVRecord row) {
        Kind kind = Kind.valueOf(ExpectationFiles.constant(row.get("kind")));
        checkConstant(kind, row.get("code"));
        return new PeriodPart(
                kind,
                row.get("code"),
                year(row.get("from")),
                year(row.get("to")),
                Seen.valueOf(ExpectationFiles.constant(row.get("seen"))),
                ExpectationFiles.required(row.get("why")),
                row.get("alternative"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    /** Kinds of device and styles of fuse are not in the catalogue, so a slip of the pen is found here. */
    private static void checkConstant(Kind kind, String code) {
        switch (kind) {
            case DEVICE -> DeviceKind.valueOf(ExpectationFiles.constant(code));
            case FUSE -> FuseStyle.valueOf(ExpectationFiles.constant(code));
            case COVERING, SIZE, TERMINAL, WORD -> {
                // checked against the catalogue, or free
            }
        }
    }

    private static @Nullable Integer year(String text) {
        return text.isEmpty() ? null : Integer.valueOf(text);
    }

    static Place place(CSVRecord row) {
        return new Place(
                ExpectationFiles.words(ExpectationFiles.required(row.get("words"))),
                ExpectationFiles.required(row.get("place")),
                yesOrNo(row.get("device")),
                yesOrNo(row.get("wires")),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static @Nullable Boolean yesOrNo(String text) {
        return switch (text) {
            case "yes" -> Boolean.TRUE;
            case "no" -> Boolean.FALSE;
            case "" -> null;
            default -> throw new IllegalArgumentException("'%s' is not yes or no".formatted(text));
        };
    }
}
