package org.loomwright.exchange;

import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.JointType;
import org.loomwright.core.catalogue.Parts;
import org.loomwright.core.catalogue.RelayType;
import org.loomwright.core.catalogue.RelayType.Form;
import org.loomwright.core.catalogue.RelayType.Points;
import org.loomwright.core.catalogue.TypicalLoad;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Ratio;

import java.math.BigDecimal;
import java.util.Locale;

/** Reads joints, relays and usual consumers from the CSV files under {@code shared/catalogue} on the class path. */
final class PartFiles {

    private PartFiles() {}

    static Parts load(TableSource source) {
        return new Parts(
                CatalogueFiles.rows(source, "joints.csv", PartFiles::joint),
                CatalogueFiles.rows(source, "relays.csv", PartFiles::relay),
                CatalogueFiles.rows(source, "typical-loads.csv", PartFiles::load));
    }

    static JointType joint(CSVRecord row) {
        return new JointType(
                row.get("code"),
                row.get("name"),
                Integer.parseInt(row.get("ends")),
                Integer.parseInt(row.get("groups")),
                row.get("terminal"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    static RelayType relay(CSVRecord row) {
        Points points =
                new Points(
                        row.get("common"),
                        row.get("makes"),
                        findText(row, "breaks"),
                        row.get("coil"),
                        findText(row, "coilReturn"));
        Form form = Form.valueOf(constant(row, "form"));
        if (points.form() != form) {
            throw new IllegalArgumentException(
                    "%s says %s, but its points are those of %s"
                            .formatted(row.get("code"), form, points.form()));
        }
        return new RelayType(
                row.get("code"),
                row.get("name"),
                amperes(row, "coilLeastA"),
                amperes(row, "coilMostA"),
                CatalogueFiles.provenance(row, "coilStatus", "coilSource"),
                Ratio.of(new BigDecimal(row.get("pullIn"))),
                amperes(row, "contactA"),
                points,
                CatalogueFiles.provenance(row, "status", "source"));
    }

    static TypicalLoad load(CSVRecord row) {
        String pieces = row.get("pieces");
        return new TypicalLoad(
                row.get("circuit"),
                row.get("part"),
                row.get("printed"),
                findText(row, "service"),
                JsonThing.kebab(DeviceKind.valueOf(constant(row, "deviceKind"))),
                pieces.isEmpty() ? null : Integer.valueOf(pieces),
                new BigDecimal(row.get("low")),
                new BigDecimal(row.get("high")),
                TypicalLoad.Unit.valueOf(constant(row, "unit")),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static String constant(CSVRecord row, String column) {
        return row.get(column).toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private static @Nullable String findText(CSVRecord row, String column) {
        String text = row.get(column);
        return text.isEmpty() ? null : text;
    }

    private static Current amperes(CSVRecord row, String column) {
        return Current.ofAmperes(new BigDecimal(row.get(column)));
    }

    static @Nullable Current findAmperes(CSVRecord row, String column) {
        return row.get(column).isEmpty() ? null : amperes(row, column);
    }

    /** A slip in a word is not taken for "no". */
    static boolean truth(CSVRecord row, String column) {
        return switch (row.get(column)) {
            case "true" -> true;
            case "false" -> false;
            default ->
                    throw new IllegalArgumentException(
                            "%s must be true or false, was %s".formatted(column, row.get(column)));
        };
    }
}
