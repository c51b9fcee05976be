package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;

import jakarta.servlet.http.HttpServletRequest;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.Electrics;
import org.loomwright.app.WiredLoom;
import org.loomwright.app.WiredLooms;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Scenario;
import org.loomwright.exchange.ColourReportWriter;
import org.loomwright.exchange.ElectricalReportWriter;
import org.loomwright.exchange.FoundWiresWriter;
import org.loomwright.exchange.OpenWriter;
import org.loomwright.exchange.ReadingsWriter;
import org.loomwright.exchange.ScenarioJson;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.util.UUID;

/**
 * What recorded looms and specifications answer alike about their electrical side. In the API's description the ids of the operations end
 * with {@link #of}.
 */
abstract class ElectricsController {

    private final WiredLooms looms;
    private final Electrics electrics;
    private final BodyReader bodies;

    ElectricsController(WiredLooms looms, Electrics electrics, BodyReader bodies) {
        this.looms = looms;
        this.electrics = electrics;
        this.bodies = bodies;
    }

    /** What the ids are of, for example {@code Loom}. */
    abstract String of();

    /** The loom that the id names. */
    abstract WiredLoom wired(UUID id);

    @Operation(
            operationId = "listScenarios",
            summary = "List the states in which the loom is looked at",
            description = "With the positions of its own switches.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.SCENARIOS)))
    @GetMapping("/scenarios")
    JsonNode scenarios(@PathVariable UUID id) {
        return ReadingsWriter.scenarios(electrics.scenarios(wired(id)));
    }

    @Operation(
            operationId = "checkElectrics",
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
        return ElectricalReportWriter.write(
                electrics.report(wired(id), changes ? Changes.SOUGHT : Changes.LEFT_OUT));
    }

    @Operation(
            operationId = "checkColours",
            summary = "Check the colours of wires against their feed and function",
            description =
                    "New wires with the code that their feed and function call for, clashes at one"
                            + " place, and recorded wires whose code contradicts their feed.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.COLOUR_REPORT)))
    @GetMapping("/colours")
    JsonNode colours(@PathVariable UUID id) {
        WiredLoom wired = wired(id);
        return new ColourReportWriter(wired.loom(), electrics.catalogue())
                .write(electrics.colours(wired));
    }

    @Operation(
            operationId = "findWire",
            summary = "Find the wires that may be the one that somebody sees",
            description =
                    "Ranked, with where each goes and what should be measured on it, switch by"
                            + " switch. Give a colour, a size or a place.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.FOUND_WIRES)))
    @GetMapping("/wire-finder")
    JsonNode find(@PathVariable UUID id, @ParameterObject SightingParameters seen) {
        return FoundWiresWriter.write(
                InvalidRequestException.orThrow(electrics.find(wired(id), seen.sighting())));
    }

    @Operation(
            operationId = "askWhatIsOpen",
            summary = "List what nobody has said, and the question to answer next",
            description =
                    "What is missing for a price or for the work, the heaviest first, with a"
                            + " score.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.OPEN_QUESTIONS)))
    @GetMapping("/open-questions")
    JsonNode open(@PathVariable UUID id) {
        return OpenWriter.write(electrics.open(wired(id)));
    }

    @Operation(
            operationId = "readCurrents",
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
                                    "Another recorded loom of the same vehicle that is plugged into"
                                            + " this one. Wires are then named loom:wire.")
                    @RequestParam(required = false)
                    @Nullable UUID with,
            HttpServletRequest request)
            throws IOException {
        WiredLoom wired = wired(id);
        Scenario scenario =
                InvalidRequestException.orThrow(ScenarioJson.read(bodies.read(request).json(), ""));
        Readings readings =
                InvalidRequestException.orThrow(
                        with == null
                                ? electrics.readings(wired, scenario)
                                : electrics.readings(wired, looms.ofLoom(with), scenario));
        return ReadingsWriter.write(readings);
    }
}
