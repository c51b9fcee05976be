package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;

import org.loomwright.app.Analyses;
import org.loomwright.app.Looms;
import org.loomwright.core.difference.LoomDifference;
import org.loomwright.core.loom.Loom;
import org.loomwright.exchange.DifferenceWriter;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

import tools.jackson.databind.JsonNode;

/** In what two looms differ. */
@RestController
@Tag(name = "Differences", description = "In what any two looms differ")
@RequestMapping(path = "/api/differences", produces = MediaType.APPLICATION_JSON_VALUE)
class DifferenceController {

    private final Looms looms;
    private final Analyses analyses;

    DifferenceController(Looms looms, Analyses analyses) {
        this.looms = looms;
        this.analyses = analyses;
    }

    @Operation(
            operationId = "compareLooms",
            summary = "Compare two looms",
            description =
                    "Each is named by its content hash, as a loom's 'contentHash' or a revision's"
                            + " 'stockHash' and 'amendedHash'.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.DIFFERENCE)))
    @GetMapping
    JsonNode between(@RequestParam String from, @RequestParam String to) {
        return DifferenceWriter.write(LoomDifference.between(loom(from), loom(to)));
    }

    private Loom loom(String hash) {
        return analyses.proven(looms.getContent(hash));
    }
}
