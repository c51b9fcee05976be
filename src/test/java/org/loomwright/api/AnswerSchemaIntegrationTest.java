package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.exchange.DemoFiles;
import org.loomwright.testing.HttpTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/** What is answered keeps to the schemas that describe it. */
@HttpTest
class AnswerSchemaIntegrationTest {

    private static final String BODIES = "urn:loomwright:schema:api-bodies:1";

    private final ApiClient api;
    private final SchemaRegistry registry =
            SchemaRegistry.withDefaultDialect(
                    SpecificationVersion.DRAFT_2020_12,
                    builder ->
                            builder.schemas(
                                    Map.of(
                                            "urn:loomwright:schema:loom:1",
                                            text("/shared/loom.schema.json"),
                                            "urn:loomwright:schema:amendments:1",
                                            text("/shared/amendments.schema.json"),
                                            BODIES,
                                            text("/shared/api-bodies.schema.json"))));

    @Autowired
    AnswerSchemaIntegrationTest(@LocalServerPort int port) {
        api = new ApiClient(port);
    }

    private static String text(String resource) {
        return new String(DemoFiles.bytes(resource), StandardCharsets.UTF_8);
    }

    /** The first of a list, which is the demonstration's unless another test has put its own before it. */
    private String newest(String list, String key) {
        return api.get(list).expect(200).json().at("/items/0/" + key).stringValue();
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
                    Analysis,         /api/looms/,          id,           /analysis
                    ChangeAnalysis,   /api/specifications/, id,           /analysis
                    Difference,       /api/specifications/, id,           /difference
                    RevisionDocument, /api/work-orders/,    revisionHash, /document
                    ChangeAnalysis,   /api/work-orders/,    revisionHash, /analysis
                    Difference,       /api/work-orders/,    revisionHash, /difference
                    """)
    void keepsToItsSchema(String schema, String list, String key, String what) {
        String place = key.equals("id") ? list : "/api/revisions/";
        String name = newest(list.substring(0, list.length() - 1), key);
        Answer answer = api.get(place + name + what).expect(200);

        assertThat(
                        registry.getSchema(SchemaLocation.of(BODIES + "#/$defs/" + schema))
                                .validate(answer.text(), InputFormat.JSON))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"/api/nothing", "/api/looms/x", "/api/looms?size=0", "/api/revisions/0"})
    void everyProblemKeepsToItsSchema(String path) {
        assertThat(
                        registry.getSchema(SchemaLocation.of(BODIES + "#/$defs/Problem"))
                                .validate(api.get(path).text(), InputFormat.JSON))
                .isEmpty();
    }
}
