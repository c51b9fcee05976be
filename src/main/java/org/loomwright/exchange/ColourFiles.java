package org.loomwright.exchange;

import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.BaseColour;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourFunction;
import org.loomwright.core.colour.code.Leg;
import org.loomwright.core.colour.code.LookAlike;
import org.loomwright.core.colour.code.SupplyColour;
import org.loomwright.core.electrical.tracing.Supply;

import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;

/** Reads the colour code from the CSV files under {@code shared/catalogue} on the class path. */
public final class ColourFiles {

    private static final String EARTH = "earth";

    private ColourFiles() {}

    /**
     * @param catalogue basic colours and services that the rows refer to
     * @return the colour code
     * @throws IllegalStateException if a file is missing or a row is wrong, naming file and row
     * @throws IllegalArgumentException if two tables contradict each other
     */
    public static ColourCode load(Catalogue catalogue) {
        return new ColourCode(
                catalogue,
                CatalogueFiles.rows("colour-functions.csv", row -> function(row, catalogue)),
                CatalogueFiles.rows("supply-colours.csv", ColourFiles::supply),
                CatalogueFiles.rows("look-alikes.csv", ColourFiles::lookAlike));
    }

    static ColourFunction function(CSVRecord row, Catalogue catalogue) {
        WireColour colour = WireColour.parse(row.get("code"));
        checkName(colour.body(), row.get("body"), catalogue);
        checkName(colour.tracer(), row.get("tracer"), catalogue);
        return new ColourFunction(
                colour,
                row.get("function"),
                services(row.get("service")),
                Leg.valueOf(constant(row.get("leg"))),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static void checkName(@Nullable String letters, String name, Catalogue catalogue) {
        String right =
                letters == null
                        ? ""
                        : catalogue.findColour(letters).map(BaseColour::name).orElse(letters);
        if (!right.equals(name)) {
            throw new IllegalArgumentException(
                    "%s stands for '%s', not for '%s'".formatted(letters, right, name));
        }
    }

    private static SortedSet<String> services(String cell) {
        return cell.isEmpty() ? new TreeSet<>() : new TreeSet<>(List.of(cell.split("\\|")));
    }

    static SupplyColour supply(CSVRecord row) {
        String supply = row.get("supply");
        String since = row.get("since");
        return new SupplyColour(
                WireColour.parse(row.get("colour")),
                supply.equals(EARTH) ? null : Supply.valueOf(constant(supply)),
                since.isEmpty() ? 0 : Integer.parseInt(since),
                row.get("note"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    static LookAlike lookAlike(CSVRecord row) {
        return new LookAlike(
                row.get("a"),
                row.get("b"),
                LookAlike.When.valueOf(constant(row.get("when"))),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
