package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;

import jakarta.servlet.http.HttpServletRequest;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.Analyses;
import org.loomwright.app.Drawings;
import org.loomwright.app.LoomSummary;
import org.loomwright.app.Looms;
import org.loomwright.app.Page;
import org.loomwright.app.StoredLoom;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.analysis.LoomAnalysis;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.exchange.AnalysisWriter;
import org.loomwright.exchange.LoomReader;
import org.loomwright.exchange.LoomWriter;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

import tools.jackson.databind.JsonNode;

import java.io.IOException;
import java.net.URI;
import java.time.Instant;
import java.util.UUID;

/** Stock looms. */
@RestController
@Tag(name = "Looms", description = "Stock looms as they were recorded")
@RequestMapping(path = "/api/looms", produces = MediaType.APPLICATION_JSON_VALUE)
class LoomController {

    private final Looms looms;
    private final Analyses analyses;
    private final Drawings drawings;
    private final BodyReader bodies;

    LoomController(Looms looms, Analyses analyses, Drawings drawings, BodyReader bodies) {
        this.looms = looms;
        this.analyses = analyses;
        this.drawings = drawings;
        this.bodies = bodies;
    }

    /** A loom as it is answered. */
    @Schema(name = "StoredLoom")
    record LoomAnswer(
            UUID id,
            long version,
            String contentHash,
            Instant createdAt,
            Instant updatedAt,
            @Schema(ref = OpenApiSchemas.LOOM) JsonNode loom) {

        static LoomAnswer of(StoredLoom loom) {
            return new LoomAnswer(
                    loom.id(),
                    loom.version(),
                    loom.contentHash(),
                    loom.createdAt(),
                    loom.updatedAt(),
                    LoomWriter.write(loom.document()));
        }
    }

    @Operation(operationId = "recordLoom", summary = "Record a loom")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.LOOM)))
    @ResponseStatus(HttpStatus.CREATED)
    @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<LoomAnswer> record(
            HttpServletRequest request,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key)
            throws IOException {
        BodyReader.Body body = bodies.read(request);
        StoredLoom loom =
                InvalidRequestException.orThrow(
                        LoomReader.read(body.json())
                                .then(document -> looms.record(document, body.request())));
        return ResponseEntity.created(URI.create("/api/looms/" + loom.id()))
                .eTag(EntityTags.of(loom.version()))
                .body(LoomAnswer.of(loom));
    }

    @Operation(
            operationId = "listLooms",
            summary = "List looms, newest first",
            description = "With 'colour' or 'wireSize' only those that have such a wire.")
    @GetMapping
    PageRequest.Listed<LoomSummary> list(
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "50") int size,
            @RequestParam(required = false) @Nullable String colour,
            @RequestParam(required = false) @Nullable String wireSize) {
        PageRequest page = PageRequest.of(after, size);
        return PageRequest.listed(find(page, colour, wireSize), loom -> loom);
    }

    private Page<LoomSummary> find(
            PageRequest page, @Nullable String colour, @Nullable String wireSize) {
        if (colour != null && wireSize != null) {
            throw InvalidRequestException.of(
                    "page.filters-clash", "Give 'colour' or 'wireSize', not both.");
        }
        if (colour != null) {
            return looms.listHavingColour(parseColour(colour), page.after(), page.size());
        }
        return wireSize == null
                ? looms.list(page.after(), page.size())
                : looms.listHavingSize(known(wireSize), page.after(), page.size());
    }

    private String known(String wireSize) {
        if (analyses.catalogue().findSize(wireSize).isEmpty()) {
            throw InvalidRequestException.of(
                    "loom.size-unknown",
                    "The parameter 'wireSize' must be a conductor size of the catalogue, for"
                            + " example 14/0.30.");
        }
        return wireSize;
    }

    private static WireColour parseColour(String letters) {
        if (!WireColour.isWellFormed(letters)) {
            throw InvalidRequestException.of(
                    "loom.colour-unknown",
                    "The parameter 'colour' must be letters of the colour code, for example GN.");
        }
        return WireColour.parse(letters);
    }

    @Operation(operationId = "readLoom", summary = "Read a loom")
    @GetMapping("/{id}")
    ResponseEntity<LoomAnswer> get(@PathVariable UUID id) {
        StoredLoom loom = looms.get(id);
        return ResponseEntity.ok().eTag(EntityTags.of(loom.version())).body(LoomAnswer.of(loom));
    }

    @Operation(operationId = "changeLoom", summary = "Change a loom")
    @io.swagger.v3.oas.annotations.parameters.RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.LOOM)))
    @PutMapping(path = "/{id}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<LoomAnswer> change(
            @PathVariable UUID id,
            @Parameter(required = true) @RequestHeader(name = "If-Match", required = false)
                    @Nullable String ifMatch,
            HttpServletRequest request)
            throws IOException {
        long version = EntityTags.version(ifMatch);
        LoomDocument document =
                InvalidRequestException.orThrow(LoomReader.read(bodies.read(request).json()));
        StoredLoom loom = InvalidRequestException.orThrow(looms.change(id, version, document));
        return ResponseEntity.ok().eTag(EntityTags.of(loom.version())).body(LoomAnswer.of(loom));
    }

    @Operation(
            operationId = "analyseLoom",
            summary = "Analyse a loom",
            description = "Cut lengths, wire counts and diameters with the usual settings.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.ANALYSIS)))
    @GetMapping("/{id}/analysis")
    JsonNode analysis(@PathVariable UUID id) {
        return AnalysisWriter.write(analyse(looms.get(id)));
    }

    private LoomAnalysis analyse(StoredLoom loom) {
        return analyses.analyse(analyses.proven(loom.document()), AnalysisSettings.USUAL);
    }

    @Operation(operationId = "drawLoom", summary = "Draw a loom to true proportions")
    @GetMapping(path = "/{id}/drawing.svg", produces = Files.SVG)
    ResponseEntity<byte[]> drawing(@PathVariable UUID id) {
        StoredLoom loom = looms.get(id);
        return Files.svg(drawings.loom(analyse(loom), loom.contentHash()));
    }

    @Operation(
            operationId = "drawLoomCrossSection",
            summary = "Draw the cross-section of a segment's bundle")
    @GetMapping(path = "/{id}/segments/{segment}/cross-section.svg", produces = Files.SVG)
    ResponseEntity<byte[]> crossSection(@PathVariable UUID id, @PathVariable String segment) {
        StoredLoom loom = looms.get(id);
        return Files.svg(drawings.crossSection(analyse(loom), segment));
    }
}
