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
import org.loomwright.app.Drawings;
import org.loomwright.app.Revisions;
import org.loomwright.app.SpecificationStore;
import org.loomwright.app.Specifications;
import org.loomwright.app.StoredRevision;
import org.loomwright.app.StoredSpecification;
import org.loomwright.exchange.AcceptedJson;
import org.loomwright.exchange.AmendmentWriter;
import org.loomwright.exchange.AnalysisWriter;
import org.loomwright.exchange.DifferenceWriter;
import org.loomwright.exchange.SettingsJson;
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
import java.util.List;
import java.util.UUID;

/** Specifications: a stock loom and what is to be changed in it. */
@RestController
@Tag(name = "Specifications", description = "A stock loom with the customer's amendments")
@RequestMapping(path = "/api/specifications", produces = MediaType.APPLICATION_JSON_VALUE)
class SpecificationController {

    private final Specifications specifications;
    private final Revisions revisions;
    private final Drawings drawings;
    private final BodyReader bodies;

    SpecificationController(
            Specifications specifications,
            Revisions revisions,
            Drawings drawings,
            BodyReader bodies) {
        this.specifications = specifications;
        this.revisions = revisions;
        this.drawings = drawings;
        this.bodies = bodies;
    }

    /** A specification as it is answered. */
    @Schema(name = "StoredSpecification")
    record SpecificationAnswer(
            UUID id,
            long version,
            String title,
            @Schema(
                            types = {OpenApiSchemas.TEXT, OpenApiSchemas.NULL},
                            format = "uuid")
                    @Nullable UUID loomId,
            String stockHash,
            Instant createdAt,
            Instant updatedAt,
            @Schema(ref = OpenApiSchemas.AMENDMENTS) JsonNode amendments,
            @Schema(ref = OpenApiSchemas.SETTINGS) JsonNode settings,
            @Schema(ref = OpenApiSchemas.ACCEPTED) JsonNode accepted) {}

    /** A line of the list of specifications. */
    @Schema(name = "SpecificationSummary")
    record SpecificationLine(
            UUID id,
            long version,
            String title,
            @Schema(
                            types = {OpenApiSchemas.TEXT, OpenApiSchemas.NULL},
                            format = "uuid")
                    @Nullable UUID loomId,
            String stockHash,
            int revisions,
            Instant createdAt,
            Instant updatedAt) {

        static SpecificationLine of(SpecificationStore.Summary line) {
            return new SpecificationLine(
                    line.id(),
                    line.version(),
                    line.title(),
                    line.loomId(),
                    line.stockHash(),
                    line.revisions(),
                    line.createdAt(),
                    line.updatedAt());
        }
    }

    private SpecificationAnswer answer(StoredSpecification specification) {
        Specifications.Wishes wishes = specifications.wishes(specification);
        return new SpecificationAnswer(
                specification.id(),
                specification.version(),
                wishes.title(),
                specification.loomId(),
                specification.draft().stock().hash(),
                specification.createdAt(),
                specification.updatedAt(),
                AmendmentWriter.write(wishes.amendments()),
                SettingsJson.write(wishes.settings()),
                AcceptedJson.write(wishes.accepted()));
    }

    @Operation(
            operationId = "beginSpecification",
            summary = "Begin a specification from a loom as it stands now")
    @RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.NEW_SPECIFICATION)))
    @ResponseStatus(HttpStatus.CREATED)
    @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<SpecificationAnswer> begin(
            HttpServletRequest request,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key)
            throws IOException {
        BodyReader.Body body = bodies.read(request);
        SpecificationBody read =
                InvalidRequestException.orThrow(SpecificationBody.readNew(body.json()));
        StoredSpecification specification =
                InvalidRequestException.orThrow(
                        specifications.begin(read.loomId(), read.wishes(), body.request()));
        return ResponseEntity.created(URI.create("/api/specifications/" + specification.id()))
                .eTag(EntityTags.of(specification.version()))
                .body(answer(specification));
    }

    @Operation(operationId = "listSpecifications", summary = "List specifications, newest first")
    @GetMapping
    PageRequest.Listed<SpecificationLine> list(
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "50") int size) {
        PageRequest page = PageRequest.of(after, size);
        return PageRequest.listed(
                specifications.list(page.after(), page.size()), SpecificationLine::of);
    }

    @Operation(operationId = "readSpecification", summary = "Read a specification")
    @GetMapping("/{id}")
    ResponseEntity<SpecificationAnswer> get(@PathVariable UUID id) {
        StoredSpecification specification = specifications.get(id);
        return ResponseEntity.ok()
                .eTag(EntityTags.of(specification.version()))
                .body(answer(specification));
    }

    @Operation(
            operationId = "changeSpecification",
            summary = "Change a specification",
            description = "Its stock loom stays as it was when the specification was begun.")
    @RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.SPECIFICATION)))
    @PutMapping(path = "/{id}", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<SpecificationAnswer> change(
            @PathVariable UUID id,
            @Parameter(required = true) @RequestHeader(name = "If-Match", required = false)
                    @Nullable String ifMatch,
            HttpServletRequest request)
            throws IOException {
        long version = EntityTags.version(ifMatch);
        Specifications.Wishes wishes =
                InvalidRequestException.orThrow(
                        SpecificationBody.readChanged(bodies.read(request).json()));
        StoredSpecification specification =
                InvalidRequestException.orThrow(specifications.change(id, version, wishes));
        return ResponseEntity.ok()
                .eTag(EntityTags.of(specification.version()))
                .body(answer(specification));
    }

    @Operation(
            operationId = "analyseSpecification",
            summary = "Analyse a specification",
            description = "Every segment before and after, cut lengths and findings.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.CHANGE_ANALYSIS)))
    @GetMapping("/{id}/analysis")
    JsonNode analysis(@PathVariable UUID id) {
        return AnalysisWriter.write(specifications.compute(specifications.get(id)).analysis());
    }

    @Operation(
            operationId = "compareSpecification",
            summary = "Compare the stock loom with the amended one")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.DIFFERENCE)))
    @GetMapping("/{id}/difference")
    JsonNode difference(@PathVariable UUID id) {
        return DifferenceWriter.write(specifications.compute(specifications.get(id)).difference());
    }

    @Operation(
            operationId = "drawSpecification",
            summary = "Draw the amended loom to true proportions",
            description = "What differs from the stock loom stands out.")
    @GetMapping(path = "/{id}/drawing.svg", produces = Files.SVG)
    ResponseEntity<byte[]> drawing(@PathVariable UUID id) {
        StoredSpecification specification = specifications.get(id);
        String footer =
                "%s, draft version %d"
                        .formatted(specification.draft().title(), specification.version());
        return Files.svg(drawings.change(specifications.compute(specification).analysis(), footer));
    }

    @Operation(
            operationId = "drawSpecificationCrossSection",
            summary = "Draw the cross-section of a segment's bundle, before and after")
    @GetMapping(path = "/{id}/segments/{segment}/cross-section.svg", produces = Files.SVG)
    ResponseEntity<byte[]> crossSection(@PathVariable UUID id, @PathVariable String segment) {
        StoredSpecification specification = specifications.get(id);
        return Files.svg(
                drawings.crossSection(specifications.compute(specification).analysis(), segment));
    }

    @Operation(
            operationId = "freezeSpecification",
            summary = "Freeze a specification as a revision",
            description = "A specification that has not changed since gives the same revision.")
    @RequestBody(required = true, content = @Content(schema = @Schema(ref = OpenApiSchemas.FREEZE)))
    @ResponseStatus(HttpStatus.CREATED)
    @PostMapping(path = "/{id}/revisions", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<RevisionController.RevisionAnswer> freeze(
            @PathVariable UUID id,
            @Parameter(required = true) @RequestHeader(name = "If-Match", required = false)
                    @Nullable String ifMatch,
            HttpServletRequest request)
            throws IOException {
        long version = EntityTags.version(ifMatch);
        String by = InvalidRequestException.orThrow(FreezeBody.read(bodies.read(request).json()));
        StoredRevision revision = revisions.freeze(id, version, by);
        return ResponseEntity.created(URI.create("/api/revisions/" + revision.hash()))
                .body(RevisionController.RevisionAnswer.of(revision));
    }

    @Operation(
            operationId = "listRevisions",
            summary = "List the revisions of a specification, newest first")
    @GetMapping("/{id}/revisions")
    List<RevisionController.RevisionAnswer> listRevisions(@PathVariable UUID id) {
        return revisions.listOf(id).stream().map(RevisionController.RevisionAnswer::of).toList();
    }
}
