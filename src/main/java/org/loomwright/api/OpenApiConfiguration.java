package org.loomwright.api;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;

import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The description of the API; what is sent is described by the JSON Schemas under {@code shared}, so there is one contract. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfiguration {

    private static final String ABOUT =
            """
            Looms, the customer's amendments, what they mean, frozen revisions, work orders and job sheets.
            Lengths and diameters are millimetres, currents amperes, angles degrees; the unit is in each field's name.
            What can be edited carries an ETag and wants it back in If-Match; what is made takes an Idempotency-Key.
            Whatever is refused is answered with a problem document (RFC 9457).\
            """;

    @Bean
    OpenAPI openApi() {
        return new OpenAPI().info(new Info().title("Loomwright").version("1").description(ABOUT));
    }

    @Bean
    OpenApiCustomizer contractsFromFiles() {
        return openApi -> {
            // The address depends on where it runs; without it the description is the same
            // everywhere.
            openApi.setServers(null);
            SchemaFiles.load().forEach(openApi.getComponents()::addSchemas);
            openApi.getPaths().values().stream()
                    .flatMap(path -> path.readOperations().stream())
                    .forEach(OpenApiConfiguration::addProblem);
        };
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
