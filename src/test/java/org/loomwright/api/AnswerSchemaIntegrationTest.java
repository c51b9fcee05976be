package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.testing.HttpTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import tools.jackson.databind.JsonNode;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whatever can be read keeps to the schema by which the API's description describes it. */
@HttpTest
class AnswerSchemaIntegrationTest {

    private static final String API = "urn:loomwright:api";
    private static final String JSON = "/responses/200/content/application~1json/schema";

    private final ApiClient api;
    private final Answer description;
    private final SchemaRegistry registry;

    @Autowired
    AnswerSchemaIntegrationTest(@LocalServerPort int port) {
        api = new ApiClient(port);
        description = api.get("/v3/api-docs").expect(200);
        registry =
                SchemaRegistry.withDefaultDialect(
                        SpecificationVersion.DRAFT_2020_12,
                        builder -> builder.schemas(Map.of(API, description.text())));
    }

    private void assertKeepsTo(String pointer, Answer answer) {
        assertThat(
                        registry.getSchema(SchemaLocation.of(API + "#" + pointer))
                                .validate(answer.text(), InputFormat.JSON))
                .as(pointer)
                .isEmpty();
    }

    @Test
    void everythingThatCanBeReadKeepsToItsSchema() {
        List<String> read = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : description.json().get("paths").properties()) {
            JsonNode get = path.getValue().path("get");
            if (!get.at(JSON).isMissingNode()) {
                String pointer = "/paths/" + path.getKey().replace("/", "~1") + "/get" + JSON;
                assertKeepsTo(
                        pointer.replace("{", "%7B").replace("}", "%7D"),
                        api.get(example(path.getKey())).expect(200));
                read.add(path.getKey());
            }
        }
        assertThat(read).hasSizeGreaterThan(13).contains("/api/differences", "/api/work-orders");
    }

    @Test
    void anAnswerThatLacksSomethingWouldBeFound() {
        assertThat(
                        registry.getSchema(
                                        SchemaLocation.of(API + "#/components/schemas/WorkOrder"))
                                .validate("{}", InputFormat.JSON))
                .hasSizeGreaterThan(5);
    }

    private String example(String path) {
        String list = path.split("/\\{", -1)[0];
        JsonNode order = newest("/api/work-orders");
        if (path.equals("/api/differences")) {
            JsonNode revision = api.get("/api/revisions/" + hash(order)).json();
            return "%s?from=%s&to=%s"
                    .formatted(path, text(revision, "stockHash"), text(revision, "amendedHash"));
        }
        if (path.contains("{id}")) {
            String example =
                    path.replace("{id}", text(newest(list), "id"))
                            .replace("{kit}", "reversing-lamps");
            return path.endsWith("wire-finder") ? example + "?colour=green" : example;
        }
        return path.replace("{hash}", hash(order)).replace("{table}", "colours");
    }

    private static String hash(JsonNode order) {
        return text(order, "revisionHash");
    }

    private static String text(JsonNode thing, String field) {
        return thing.get(field).stringValue();
    }

    private JsonNode newest(String list) {
        return api.get(list).expect(200).json().at("/items/0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/api/nothing", "/api/looms/x", "/api/looms?size=0", "/api/revisions/0"})
    void everyProblemKeepsToItsSchema(String path) {
        assertKeepsTo("/components/schemas/Problem", api.get(path));
    }
}
