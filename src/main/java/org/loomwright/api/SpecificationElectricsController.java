package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;

import org.loomwright.app.Electrics;
import org.loomwright.app.WiredLoom;
import org.loomwright.app.WiredLooms;
import org.loomwright.exchange.PeriodWriter;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

import tools.jackson.databind.JsonNode;

import java.util.UUID;

/** The electrical side of a specification: of the amended loom, beside the recorded one. */
@RestController
@Tag(
        name = "Electrics of specifications",
        description = "Currents, voltages, colours and what follows from them")
@RequestMapping(path = "/api/specifications/{id}", produces = MediaType.APPLICATION_JSON_VALUE)
class SpecificationElectricsController extends ElectricsController {

    private final WiredLooms looms;
    private final Electrics electrics;

    SpecificationElectricsController(WiredLooms looms, Electrics electrics, BodyReader bodies) {
        super(looms, electrics, bodies);
        this.looms = looms;
        this.electrics = electrics;
    }

    @Override
    String of() {
        return "OfSpecification";
    }

    @Override
    WiredLoom wired(UUID id) {
        return looms.ofSpecification(id);
    }

    @Operation(
            operationId = "judgePeriod",
            summary = "Judge how far the additions are of the period",
            description =
                    "What a strict judge of originality would mark, what would be of the period,"
                            + " and the way back to stock.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.PERIOD_REPORT)))
    @GetMapping("/period")
    JsonNode period(@PathVariable UUID id) {
        return PeriodWriter.write(electrics.period(wired(id)));
    }
}
