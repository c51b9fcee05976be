package org.loomwright.api;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;

import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.customizers.OperationCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** The description of the API; what is sent is described by the JSON Schemas under {@code shared}, so there is one contract. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfiguration {

    private static final Set<String> FILES = Set.of(Files.SVG, "application/pdf");

    private static final String ABOUT =
            """
            Looms, the customer's amendments, what they mean, frozen revisions, work orders and job sheets.
            Lengths and diameters are millimetres, currents amperes, angles degrees; the unit is in each field's name.
            What can be edited carries an ETag and wants it back in If-Match; what is made takes an Idempotency-Key.
            Whatever is refused is answered with a problem document (RFC 9457).\
            """;

    @Bean
    OpenAPI openApi() {
        // The address depends on where it runs; the description is the same everywhere.
        return new OpenAPI()
                .info(new Info().title("Loomwright").version("1").description(ABOUT))
                .addServersItem(new Server().url("/").description("where this description is"));
    }

    @Bean
    OpenApiCustomizer contractsFromFiles() {
        return openApi -> {
            openApi.getTags().sort(Comparator.comparing(Tag::getName));
            openApi.getComponents()
                    .getSchemas()
                    .values()
                    .forEach(OpenApiConfiguration::requireEverything);
            SchemaFiles.load().forEach(openApi.getComponents()::addSchemas);
            openApi.getPaths().values().stream()
                    .flatMap(path -> path.readOperations().stream())
                    .forEach(
                            operation -> {
                                addProblem(operation);
                                describeFiles(operation);
                            });
        };
    }

    /** Controllers that answer alike share their methods; their operations still have ids of their own. */
    @Bean
    OperationCustomizer idsOfSharedOperations(List<ElectricsController> controllers) {
        return (operation, method) -> {
            for (ElectricsController controller : controllers) {
                var described =
                        method.getMethodAnnotation(io.swagger.v3.oas.annotations.Operation.class);
                if (method.getBeanType().isInstance(controller) && described != null) {
                    operation.setOperationId(described.operationId() + controller.of());
                }
            }
            return operation;
        };
    }

    /** A file is not a string of base64, which is what the description would say of bytes. */
    private static void describeFiles(Operation operation) {
        operation.getResponses().values().stream()
                .flatMap(response -> response.getContent().entrySet().stream())
                .filter(content -> FILES.contains(content.getKey()))
                .forEach(content -> content.getValue().setSchema(file(content.getKey())));
    }

    private static Schema<?> file(String mediaType) {
        return new JsonSchema().contentMediaType(mediaType);
    }

    /** What is answered is always whole; a value that may be lacking is null. */
    private static void requireEverything(Schema<?> answer) {
        if (answer.getProperties() != null) {
            answer.setRequired(answer.getProperties().keySet().stream().sorted().toList());
        }
    }

    private static void addProblem(Operation operation) {
        MediaType problem = new MediaType().schema(new Schema<>().$ref(OpenApiSchemas.PROBLEM));
        operation
                .getResponses()
                .addApiResponse(
                        "default",
                        new ApiResponse()
                                .description("What was asked is refused, with the reasons.")
                                .content(
                                        new Content()
                                                .addMediaType(
                                                        "application/problem+json", problem)));
    }
}
