package org.loomwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.loom.CustomColour;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The demonstration data keeps to the schemas, and the schemas refuse what the reader and the checker refuse. */
class DemoSchemaTest {

    private static final String LOOM_ID = "urn:loomwright:schema:loom:1";
    private static final String AMENDMENTS_ID = "urn:loomwright:schema:amendments:1";

    private final SchemaRegistry registry =
            SchemaRegistry.withDefaultDialect(
                    SpecificationVersion.DRAFT_2020_12,
                    builder ->
                            builder.schemas(
                                    Map.of(
                                            LOOM_ID, text(DemoFiles.LOOM_SCHEMA),
                                            AMENDMENTS_ID, text(DemoFiles.AMENDMENTS_SCHEMA))));
    private final Schema loom = registry.getSchema(SchemaLocation.of(LOOM_ID));
    private final Schema amendments = registry.getSchema(SchemaLocation.of(AMENDMENTS_ID));

    private static String text(String resource) {
        return new String(DemoFiles.bytes(resource), StandardCharsets.UTF_8);
    }

    private static List<Error> check(Schema schema, JsonNode document) {
        return schema.validate(StrictJson.write(document), InputFormat.JSON);
    }

    @ParameterizedTest
    @ValueSource(strings = {DemoFiles.LOOM_SCHEMA, DemoFiles.AMENDMENTS_SCHEMA})
    void everySchemaIsItselfASchemaOf202012(String resource) {
        Schema metaSchema =
                registry.getSchema(
                        SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(metaSchema.validate(text(resource), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {DemoFiles.MAIN, DemoFiles.ENGINE})
    void everyDemoLoomKeepsToTheSchema(String resource) {
        assertThat(loom.validate(text(resource), InputFormat.JSON)).isEmpty();
    }

    @Test
    void theAdditionsKeepToTheSchema() {
        assertThat(amendments.validate(text(DemoFiles.ADDITIONS), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {DemoFiles.MAIN, DemoFiles.ENGINE})
    void whatTheWriterWritesKeepsToTheSchema(String resource) {
        JsonNode written = LoomWriter.write(DemoFiles.document(resource));
        assertThat(check(loom, written)).isEmpty();
    }

    @Test
    void coloursOfTheLoomKeepToTheSchema() {
        List<CustomColour> own =
                List.of(
                        new CustomColour("XD", "gold", "#c9a227"),
                        new CustomColour("T", "reddish-brown", "#c8a06a"));
        ObjectNode written =
                LoomWriter.write(DemoFiles.document(DemoFiles.MAIN).withCustomColours(own));
        ((ObjectNode) written.at("/wires/0")).put("colour", "GXD");
        assertThat(check(loom, written)).isEmpty();
    }

    @Test
    void theAmendmentsThatTheWriterWritesKeepToTheSchema() {
        ObjectNode document = (ObjectNode) DemoFiles.json(DemoFiles.ADDITIONS);
        document.set("amendments", AmendmentWriter.write(DemoFiles.additions()));
        assertThat(check(amendments, document)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /                            | remark       | "new"
                    /                            | formatVersion| 2
                    /                            | nodes        | []
                    /vehicle                     | hand         | "middle"
                    /vehicle                     | year         | 1800
                    /nodes/0                     | id           | "a b"
                    /nodes/0                     | name         | " "
                    /segments/0                  | lengthMm     | 0
                    /segments/0                  | lengthMm     | 15000.001
                    /segments/0                  | lengthMm     | 210.0001
                    /segments/0                  | lengthMm     | "210"
                    /segments/0                  | colour       | "R"
                    /segments/0/leaves           | clock        | 13
                    /segments/0/finish           | picksPer25Mm | 101
                    /segments/0/finish/evidence  | kind         | "hearsay"
                    /segments/0/openings/0       | clearDiameterMm | 250.5
                    /segments/0/openings/0       | passes       | "sideways"
                    /devices/0                   | kind         | "gadget"
                    /devices/0                   | loadA        | -1
                    /devices/0                   | points       | []
                    /devices/0/points/0          | tailMm       | 5001
                    /devices/0                   | serves       | ""
                    /devices/0                   | ratingA      | 0
                    /devices/0                   | voltageV     | 3
                    /devices/0                   | needsEarth   | "wet"
                    /devices/0                   | fuses        | [{"from": "1", "to": "2", "style": "blade"}]
                    /devices/0                   | fuses        | [{"from": "1", "to": "2", "style": "tin", "markedA": 5}]
                    /devices/0                   | fuses        | [{"from": "1", "to": "2", "style": "blade", "markedA": 501}]
                    /devices/0/points/0          | takes        | 0
                    /devices/0/points/0          | takes        | 51
                    /wires/0/a                   | fitted       | "later"
                    /wires/0                     | colour       | "L"
                    /wires/0                     | colour       | "GX"
                    /                            | customColours| [{"letters": "XD", "name": "gold"}]
                    /                            | customColours| [{"letters": "GD", "name": "gold", "swatch": "#c9a227"}]
                    /                            | customColours| [{"letters": "N", "name": "gold", "swatch": "#c9a227"}]
                    /                            | customColours| [{"letters": "XD", "name": "24", "swatch": "#c9a227"}]
                    /                            | customColours| [{"letters": "XD", "name": "gold", "swatch": "#C9A227"}]
                    /wires/0                     | condition    | "so-so"
                    /wires/0/a                   | way          | 3
                    """)
    void refusesAFieldThatIsWrong(String place, String field, String value) {
        ObjectNode document = (ObjectNode) DemoFiles.json(DemoFiles.MAIN);
        JsonNode thing = place.equals("/") ? document : document.at(place);
        ((ObjectNode) thing)
                .set(
                        field,
                        StrictJson.parse(value.getBytes(StandardCharsets.UTF_8))
                                .orElseThrow(
                                        reasons -> new IllegalStateException(reasons.toString())));
        assertThat(check(loom, document)).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /                           | datum
                    /vehicle                    | earth
                    /nodes/0                    | name
                    /segments/0                 | finish
                    /segments/0/finish          | baseYarn
                    /segments/0/finish/evidence | note
                    /devices/0/points/0         | node
                    /wires/0                    | circuit
                    /wires/0/b                  | terminal
                    /checks/0                   | measuredMm
                    """)
    void refusesADocumentWithoutAFieldThatIsNeeded(String place, String field) {
        ObjectNode document = (ObjectNode) DemoFiles.json(DemoFiles.MAIN);
        JsonNode thing = place.equals("/") ? document : document.at(place);
        ((ObjectNode) thing).remove(field);
        assertThat(check(loom, document)).isNotEmpty();
    }

    @Test
    void refusesAnAmendmentOfAnUnknownKind() {
        assertThat(check(amendments, withFirstAmendment("kind", "paint-it"))).isNotEmpty();
    }

    @Test
    void refusesAnAmendmentWithAFieldOfAnotherKind() {
        assertThat(check(amendments, withFirstAmendment("wire", "W001"))).isNotEmpty();
    }

    @Test
    void anAmendmentNeedsNoReason() {
        ObjectNode document = (ObjectNode) DemoFiles.json(DemoFiles.ADDITIONS);
        ((ObjectNode) document.at("/amendments/0")).remove("reason");
        assertThat(check(amendments, document)).isEmpty();
    }

    private static JsonNode withFirstAmendment(String field, String value) {
        ObjectNode document = (ObjectNode) DemoFiles.json(DemoFiles.ADDITIONS);
        ((ObjectNode) document.at("/amendments/0"))
                .set(field, JsonNodeFactory.instance.stringNode(value));
        return document;
    }
}
