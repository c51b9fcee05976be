package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.kit.Kits;
import org.loomwright.core.kit.Recipe;
import org.loomwright.core.kit.RecipeCheck;
import org.loomwright.testing.TestCatalogue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The recipes as files: they keep to the schema, and what is wrong in one is refused. */
class KitFilesTest {

    private static final String SCHEMA = "urn:loomwright:schema:kit:1";
    private static final String LAMPS = "/shared/kits/reversing-lamps.json";

    private final SchemaRegistry registry =
            SchemaRegistry.withDefaultDialect(
                    SpecificationVersion.DRAFT_2020_12,
                    builder -> builder.schemas(Map.of(SCHEMA, text("/shared/kit.schema.json"))));
    private final Schema schema = registry.getSchema(SchemaLocation.of(SCHEMA));

    static Stream<String> recipes() {
        return KitFiles.load(TestCatalogue.get()).all().stream().map(Recipe::id);
    }

    private static String text(String resource) {
        return new String(DemoFiles.bytes(resource), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void everyRecipeKeepsToTheSchema(String id) {
        assertThat(schema.validate(text("/shared/kits/" + id + ".json"), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void thereAreAtLeastFourteenKitsAndEachWarns() {
        List<Recipe> all = KitFiles.load(TestCatalogue.get()).all();
        assertThat(all).hasSizeGreaterThanOrEqualTo(14);
        assertThat(all)
                .allMatch(
                        recipe ->
                                recipe.cautions().stream()
                                        .anyMatch(it -> it.contains("not an approval")));
    }

    @Test
    void aColourFromMemorySaysSo() {
        Kits kits = KitFiles.load(TestCatalogue.get());
        assertThat(kits.all())
                .flatExtracting(Recipe::wires)
                .filteredOn(wire -> wire.colourProvenance().source().contains("memory"))
                .isNotEmpty()
                .allMatch(wire -> wire.colourProvenance().status() == Status.MEMORY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"GN\"|\"GQ\"|There is no colour GQ.",
                "switch/OUT|switch/OUTLET|There is no point switch/OUTLET.",
                "\"feed:main\"|\"feed:other\"|There is no place feed:other.",
                "\"serves\": \"reversing-lamps\"|\"serves\": \"warp-drive\"|There is no service"
                        + " warp-drive.",
                "answer:switch-at|answer:nowhere|There is no spot answer:nowhere.",
            })
    void aRecipeThatSpeaksOfWhatIsNotThereIsRefused(String old, String wrong, String reason) {
        String json = text(LAMPS).replace(old, wrong);
        Recipe recipe =
                StrictJson.parse(json.getBytes(StandardCharsets.UTF_8))
                        .then(RecipeReader::read)
                        .orElseThrow(faults -> new IllegalStateException(faults.toString()));
        assertThat(RecipeCheck.check(recipe, TestCatalogue.get()))
                .extracting(Finding::text)
                .contains(reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"formatVersion\": 1|\"formatVersion\": 2",
                "\"circuit\":|\"circiut\":",
                "\"kind\": \"watts\"|\"kind\": \"horsepower\"",
                "\"amperes\": 0.11|\"amperes\": \"little\"",
            })
    void aRecipeOfAnotherShapeIsRefusedByReaderAndSchema(String old, String wrong) {
        String json = text(LAMPS).replace(old, wrong);
        assertThat(json).isNotEqualTo(text(LAMPS));
        assertThat(StrictJson.parse(json.getBytes(StandardCharsets.UTF_8)).then(RecipeReader::read))
                .isInstanceOf(Outcome.Rejected.class);
        assertThat(schema.validate(json, InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void twoRecipesOfOneNameAreRefused() {
        Recipe recipe = KitFiles.load(TestCatalogue.get()).all().getFirst();
        assertThatThrownBy(() -> new Kits(List.of(recipe, recipe)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(recipe.id());
    }
}
