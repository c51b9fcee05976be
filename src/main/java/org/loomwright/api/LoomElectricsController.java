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
import org.loomwright.app.WiredLoom;
import org.loomwright.app.WiredLooms;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.util.UUID;

/** The electrical side of a recorded loom. */
@RestController
@Tag(
        name = "Electrics of looms",
        description = "Currents, voltages, colours and what follows from them")
@RequestMapping(path = "/api/looms/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
class LoomElectricsController {

    private final WiredLooms looms;
    private final ElectricAnswers answers;

    LoomElectricsController(WiredLooms looms, ElectricAnswers answers) {
        this.looms = looms;
        this.answers = answers;
    }

    @Operation(
            operationId = "listLoomScenarios",
            summary = "List the states in which the loom is looked at")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.SCENARIOS)))
    @GetMapping("/scenarios")
    JsonNode scenarios(@PathVariable UUID id) {
        return answers.scenarios(looms.ofLoom(id));
    }

    @Operation(
            operationId = "checkLoomElectrics",
            summary = "Check currents, drops, fuses, feeds, charging and short circuits",
            description =
                    "In the standard scenarios: findings with figure, limit, margin, the limit's"
                            + " source and what would put it right. No finding is not a clearance.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.ELECTRICAL_REPORT)))
    @GetMapping("/electrics")
    JsonNode electrics(
            @PathVariable UUID id,
            @Parameter(
                            description =
                                    "Whether to look for the cheapest single change that puts a"
                                            + " figure right, which takes longer.")
                    @RequestParam(defaultValue = "false")
                    boolean changes) {
        return answers.report(looms.ofLoom(id), changes);
    }

    @Operation(
            operationId = "checkLoomColours",
            summary = "Check the colours of wires against their feed and function",
            description =
                    "New wires with the code that their feed and function call for, clashes at one"
                            + " place, and recorded wires whose code contradicts their feed.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.COLOUR_REPORT)))
    @GetMapping("/colours")
    JsonNode colours(@PathVariable UUID id) {
        return answers.colours(looms.ofLoom(id));
    }

    @Operation(
            operationId = "findLoomWire",
            summary = "Find the wires that may be the one that somebody sees",
            description =
                    "Ranked, with where each goes and what should be measured on it, switch by"
                            + " switch. Give a colour, a size or a place.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.FOUND_WIRES)))
    @GetMapping("/wire-finder")
    JsonNode find(@PathVariable UUID id, @ParameterObject SightingParameters seen) {
        return answers.find(looms.ofLoom(id), seen.sighting());
    }

    @Operation(
            operationId = "askLoom",
            summary = "List what nobody has said, and the question to answer next",
            description =
                    "What is missing for a price or for the work, the heaviest first, with a"
                            + " score.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.OPEN_QUESTIONS)))
    @GetMapping("/open-questions")
    JsonNode open(@PathVariable UUID id) {
        return answers.open(looms.ofLoom(id));
    }

    @Operation(
            operationId = "readLoomCurrents",
            summary = "Calculate currents and voltages in one scenario")
    @RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.SCENARIO)))
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.READINGS)))
    @PostMapping(path = "/readings", consumes = MediaType.APPLICATION_JSON_VALUE)
    JsonNode readings(
            @PathVariable UUID id,
            @Parameter(
                            description =
                                    "Another loom of the same vehicle that is plugged into this"
                                        + " one. Wires are then named loom:wire.")
                    @RequestParam(required = false)
                    @Nullable UUID with,
            HttpServletRequest request)
            throws IOException {
        WiredLoom loom = looms.ofLoom(id);
        return with == null
                ? answers.readings(loom, request)
                : answers.readings(loom, looms.ofLoom(with), request);
    }
}
