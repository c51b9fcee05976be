package org.loomwright.exchange;

import org.apache.commons.csv.CSVRecord;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.kit.Kits;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.kit.RecipeCheck;
import org.loomwright.core.kit.expansion.UsualTerminals;
import org.loomwright.core.loom.DeviceKind;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/** Reads the recipes of the kits from {@code shared/kits} on the class path, and the terminals that kits choose. */
public final class KitFiles {

    private static final String FOLDER = "/shared/kits/";

    private KitFiles() {}

    /**
     * @param catalogue the tables that recipes refer to
     * @return every recipe, in the order of the list
     * @throws IllegalStateException if a file is missing or a recipe is wrong, naming every fault
     */
    public static Kits load(Catalogue catalogue) {
        return new Kits(
                StrictJson.parse(bytes(FOLDER + "kits.json"))
                        .orElseThrow(faults -> wrong("kits", faults))
                        .valueStream()
                        .map(id -> recipe(id.asString(), catalogue))
                        .toList());
    }

    /**
     * @return the usual terminals
     * @throws IllegalStateException if the file is missing or a row is wrong, naming file and row
     */
    public static UsualTerminals terminals() {
        return new UsualTerminals(
                CatalogueFiles.rows("device-terminals.csv", KitFiles::terminal),
                CatalogueFiles.rows("terminal-substitutes.csv", KitFiles::substitute));
    }

    private static UsualTerminals.Row terminal(CSVRecord row) {
        return new UsualTerminals.Row(
                DeviceKind.valueOf(row.get("kind").toUpperCase(Locale.ROOT).replace('-', '_')),
                row.get("terminal"),
                row.get("shared"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static UsualTerminals.Substitute substitute(CSVRecord row) {
        return new UsualTerminals.Substitute(
                row.get("terminal"),
                row.get("instead"),
                CatalogueFiles.provenance(row, "status", "source"));
    }

    private static Recipe recipe(String id, Catalogue catalogue) {
        Recipe recipe =
                StrictJson.parse(bytes(FOLDER + id + ".json"))
                        .then(RecipeReader::read)
                        .then(it -> checked(it, catalogue))
                        .orElseThrow(faults -> wrong(id, faults));
        if (!recipe.id().equals(id)) {
            throw new IllegalStateException(
                    "the recipe in %s%s.json calls itself %s".formatted(FOLDER, id, recipe.id()));
        }
        return recipe;
    }

    private static Outcome<Recipe> checked(Recipe recipe, Catalogue catalogue) {
        List<Finding> faults = RecipeCheck.check(recipe, catalogue);
        return faults.isEmpty() ? Outcome.accepted(recipe) : Outcome.rejected(faults);
    }

    private static IllegalStateException wrong(String id, List<Finding> faults) {
        return new IllegalStateException(
                "the recipe %s%s.json is wrong: %s"
                        .formatted(
                                FOLDER,
                                id,
                                String.join(" ", faults.stream().map(Finding::text).toList())));
    }

    private static byte[] bytes(String resource) {
        try (InputStream stream = KitFiles.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the recipe " + resource + " is missing");
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the recipe " + resource + " cannot be read", e);
        }
    }
}
