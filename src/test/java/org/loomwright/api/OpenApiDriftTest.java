package org.loomwright.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.exchange.DemoFiles;
import org.loomwright.testing.HttpTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The committed description of the API is the one that the running program gives, and it holds together. */
@HttpTest
class OpenApiDriftTest {

    private static final String COMMITTED = "/shared/openapi.yaml";
    private static final Path RENEWED = Path.of("target", "openapi.yaml");
    private static final Pattern SPEAKING = Pattern.compile("[a-z]+[A-Z][A-Za-z]+");

    private final ApiClient api;
    private final RequestMappingHandlerMapping mappings;
    private final JsonNode description;

    @Autowired
    OpenApiDriftTest(
            @LocalServerPort int port,
            @Qualifier("requestMappingHandlerMapping") RequestMappingHandlerMapping mappings) {
        this.api = new ApiClient(port);
        this.mappings = mappings;
        this.description = api.get("/v3/api-docs").expect(200).json();
    }

    private Stream<JsonNode> operations() {
        return description.get("paths").valueStream().flatMap(JsonNode::valueStream);
    }

    @Test
    void theCommittedDescriptionIsTheOneThatTheProgramGives() throws IOException {
        String given = api.get("/v3/api-docs.yaml").expect(200).text();
        Files.writeString(RENEWED, given);

        assertThat(new String(DemoFiles.bytes(COMMITTED), StandardCharsets.UTF_8))
                .as("the API changed; if that was meant, renew: cp %s shared/openapi.yaml", RENEWED)
                .isEqualTo(given);
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        List<String> references =
                description.findValues("$ref").stream().map(JsonNode::stringValue).toList();

        assertThat(references).hasSizeGreaterThan(100);
        assertThat(references)
                .allSatisfy(
                        reference -> {
                            assertThat(reference).startsWith("#/components/schemas/");
                            assertThat(description.at(reference.substring(1)).isObject())
                                    .as(reference)
                                    .isTrue();
                        });
    }

    @Test
    void everyOperationHasASpeakingNameOfItsOwnAndASummary() {
        List<String> names =
                operations().map(operation -> operation.get("operationId").stringValue()).toList();

        assertThat(names).doesNotHaveDuplicates().allMatch(SPEAKING.asMatchPredicate());
        assertThat(operations()).allMatch(operation -> operation.has("summary"));
    }

    @Test
    void noEndpointIsMissing() {
        Set<String> described = new TreeSet<>();
        description
                .get("paths")
                .forEachEntry(
                        (path, methods) ->
                                methods.propertyNames()
                                        .forEach(
                                                method ->
                                                        described.add(
                                                                method.toUpperCase(Locale.ROOT)
                                                                        + " "
                                                                        + path)));
        Set<String> existing =
                mappings.getHandlerMethods().keySet().stream()
                        .flatMap(OpenApiDriftTest::methodsAndPaths)
                        .filter(endpoint -> endpoint.contains(" /api/"))
                        .collect(Collectors.toSet());

        assertThat(existing).hasSizeGreaterThan(25);
        assertThat(described).containsExactlyInAnyOrderElementsOf(existing);
    }

    private static Stream<String> methodsAndPaths(RequestMappingInfo mapping) {
        return mapping.getMethodsCondition().getMethods().stream()
                .flatMap(
                        method ->
                                mapping.getPatternValues().stream()
                                        .map(path -> method + " " + path));
    }

    @Test
    void whatIsSentIsDescribedByTheSchemasInFiles() {
        Set<String> sent =
                operations()
                        .filter(operation -> operation.has("requestBody"))
                        .map(
                                operation ->
                                        operation.at(
                                                "/requestBody/content/application~1json/schema/$ref"))
                        .map(JsonNode::stringValue)
                        .map(reference -> reference.substring(reference.lastIndexOf('/') + 1))
                        .collect(Collectors.toSet());

        assertThat(sent)
                .containsExactlyInAnyOrder(
                        "Loom",
                        "NewSpecification",
                        "Specification",
                        "Freeze",
                        "NewWorkOrder",
                        "NewMove",
                        "Scenario",
                        "KitAnswers")
                .isSubsetOf(SchemaFiles.load().keySet());
    }

    @Test
    void everyAnswerSaysWhatItIsAndTheProblemThatCanComeInstead() {
        assertThat(operations())
                .allSatisfy(
                        operation -> {
                            assertThat(operation.at("/responses/default/content").propertyNames())
                                    .containsExactly("application/problem+json");
                            assertThat(operation.get("responses").propertyNames())
                                    .containsAnyOf("200", "201");
                        });
        assertThat(description.at("/components/schemas").propertyNames())
                .noneMatch(name -> name.startsWith("JsonNode"));
    }

    @Test
    void theDescriptionDoesNotSayWhereItWasMade() {
        assertThat(description.get("openapi").stringValue()).startsWith("3.1");
        assertThat(description.get("servers"))
                .extracting(server -> server.get("url").stringValue())
                .containsExactly("/");
    }
}
