package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;

import jakarta.servlet.http.HttpServletRequest;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.Kitting;
import org.loomwright.exchange.AnswerReader;
import org.loomwright.exchange.ElectricalReportWriter;
import org.loomwright.exchange.KitWriter;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

import java.io.IOException;
import java.util.UUID;

/** Kits: accessories and conversions as recipes that become amendments. */
@RestController
@Tag(name = "Kits", description = "Accessories and conversions that become amendments")
@RequestMapping(path = "/api", produces = MediaType.APPLICATION_JSON_VALUE)
class KitController {

    private static final String USUAL = "Whether what is not answered is answered as usual.";

    private final Kitting kitting;
    private final BodyReader bodies;

    KitController(Kitting kitting, BodyReader bodies) {
        this.kitting = kitting;
        this.bodies = bodies;
    }

    @Operation(operationId = "listKits", summary = "List the kits that there are")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.KITS)))
    @GetMapping("/kits")
    JsonNode list() {
        return KitWriter.list(kitting.all());
    }

    @Operation(
            operationId = "askKit",
            summary = "Read the questions of a kit",
            description = "With what the amended loom offers as answers, the likeliest first.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.KIT)))
    @GetMapping("/specifications/{id}/kits/{kit}")
    JsonNode ask(@PathVariable UUID id, @PathVariable String kit) {
        Kitting.Asked asked = InvalidRequestException.orThrow(kitting.ask(id, kit));
        return KitWriter.questions(asked.recipe(), asked.questions());
    }

    @Operation(
            operationId = "planKit",
            summary = "Say what a kit comes to, and store nothing",
            description =
                    "The amendments with the reason for each feed, size, fuse and colour, and what"
                        + " the electrical checks find with the kit and did not find without it.")
    @RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.KIT_ANSWERS)))
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.KIT_PLAN)))
    @PostMapping(
            path = "/specifications/{id}/kits/{kit}/plan",
            consumes = MediaType.APPLICATION_JSON_VALUE)
    JsonNode plan(
            @PathVariable UUID id,
            @PathVariable String kit,
            @Parameter(description = USUAL) @RequestParam(defaultValue = "false")
                    boolean otherwiseUsual,
            HttpServletRequest request)
            throws IOException {
        Kitting.Wish wish = wish(kit, otherwiseUsual, request);
        return write(InvalidRequestException.orThrow(kitting.plan(id, wish)));
    }

    @Operation(
            operationId = "addKit",
            summary = "Add a kit to a specification",
            description =
                    "Its amendments are appended, all of them or none; each can be edited"
                            + " afterwards.")
    @RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.KIT_ANSWERS)))
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.KIT_PLAN)))
    @PostMapping(
            path = "/specifications/{id}/kits/{kit}",
            consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<JsonNode> add(
            @PathVariable UUID id,
            @PathVariable String kit,
            @Parameter(description = USUAL) @RequestParam(defaultValue = "false")
                    boolean otherwiseUsual,
            @Parameter(required = true) @RequestHeader(name = "If-Match", required = false)
                    @Nullable String ifMatch,
            HttpServletRequest request)
            throws IOException {
        long version = EntityTags.version(ifMatch);
        Kitting.Added added =
                InvalidRequestException.orThrow(
                        kitting.add(id, version, wish(kit, otherwiseUsual, request)));
        return ResponseEntity.ok()
                .eTag(EntityTags.of(added.specification().version()))
                .body(write(added.planned()));
    }

    private Kitting.Wish wish(String kit, boolean otherwiseUsual, HttpServletRequest request)
            throws IOException {
        return new Kitting.Wish(
                kit,
                InvalidRequestException.orThrow(AnswerReader.read(bodies.read(request).json(), "")),
                otherwiseUsual);
    }

    private static ObjectNode write(Kitting.Planned planned) {
        ObjectNode json = KitWriter.plan(planned.plan());
        json.set("findings", ElectricalReportWriter.findings(planned.findings()));
        return json;
    }
}
