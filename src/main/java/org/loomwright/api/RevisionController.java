package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;

import org.loomwright.app.Drawings;
import org.loomwright.app.Revisions;
import org.loomwright.app.StoredRevision;
import org.loomwright.exchange.DifferenceWriter;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

import tools.jackson.databind.JsonNode;

import java.time.Instant;
import java.util.UUID;

/** Frozen revisions. */
@RestController
@Tag(name = "Revisions", description = "Specifications frozen with every figure")
@RequestMapping(path = "/api/revisions", produces = MediaType.APPLICATION_JSON_VALUE)
class RevisionController {

    private final Revisions revisions;
    private final Drawings drawings;

    RevisionController(Revisions revisions, Drawings drawings) {
        this.revisions = revisions;
        this.drawings = drawings;
    }

    /** A revision as it is answered. */
    @Schema(name = "Revision")
    record RevisionAnswer(
            String hash,
            UUID specificationId,
            int number,
            String stockHash,
            String amendedHash,
            Instant frozenAt,
            String frozenBy) {

        static RevisionAnswer of(StoredRevision revision) {
            return new RevisionAnswer(
                    revision.hash(),
                    revision.specificationId(),
                    revision.number(),
                    revision.stockHash(),
                    revision.amendedHash(),
                    revision.frozenAt(),
                    revision.frozenBy());
        }
    }

    @Operation(operationId = "readRevision", summary = "Read what is known of a revision")
    @GetMapping("/{hash}")
    ResponseEntity<RevisionAnswer> get(@PathVariable String hash) {
        StoredRevision revision = revisions.get(hash);
        return ResponseEntity.ok()
                .eTag(EntityTags.weak(revision.hash()))
                .body(RevisionAnswer.of(revision));
    }

    @Operation(
            operationId = "readRevisionDocument",
            summary = "Read a revision whole",
            description =
                    "The canonical JSON (RFC 8785) whose SHA-256 is the revision's hash: stock"
                        + " loom, amendments, settings, amended loom and every figure as frozen.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.REVISION_DOCUMENT)))
    @GetMapping("/{hash}/document")
    ResponseEntity<String> document(@PathVariable String hash) {
        StoredRevision revision = revisions.get(hash);
        return ResponseEntity.ok().eTag(EntityTags.weak(revision.hash())).body(revision.document());
    }

    @Operation(
            operationId = "readRevisionAnalysis",
            summary = "Read the figures of a revision",
            description = "As they were frozen: segments before and after, cut lengths, findings.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.CHANGE_ANALYSIS)))
    @GetMapping("/{hash}/analysis")
    ResponseEntity<JsonNode> analysis(@PathVariable String hash) {
        StoredRevision revision = revisions.get(hash);
        return ResponseEntity.ok()
                .eTag(EntityTags.weak(hash))
                .body(revisions.frozenAnalysis(revision));
    }

    @Operation(
            operationId = "compareRevision",
            summary = "Compare the stock loom of a revision with its amended one")
    @ApiResponse(
            responseCode = "200",
            content = @Content(schema = @Schema(ref = OpenApiSchemas.DIFFERENCE)))
    @GetMapping("/{hash}/difference")
    JsonNode difference(@PathVariable String hash) {
        return DifferenceWriter.write(revisions.compute(revisions.get(hash)).difference());
    }

    @Operation(
            operationId = "drawRevision",
            summary = "Draw the amended loom of a revision to true proportions")
    @GetMapping(path = "/{hash}/drawing.svg", produces = Files.SVG)
    ResponseEntity<byte[]> drawing(@PathVariable String hash) {
        StoredRevision revision = revisions.get(hash);
        String footer = "revision %d, content %s".formatted(revision.number(), revision.hash());
        return Files.svg(drawings.change(revisions.compute(revision).analysis(), footer));
    }

    @Operation(
            operationId = "drawRevisionCrossSection",
            summary = "Draw the cross-section of a segment's bundle, before and after")
    @GetMapping(path = "/{hash}/segments/{segment}/cross-section.svg", produces = Files.SVG)
    ResponseEntity<byte[]> crossSection(@PathVariable String hash, @PathVariable String segment) {
        StoredRevision revision = revisions.get(hash);
        return Files.svg(drawings.crossSection(revisions.compute(revision).analysis(), segment));
    }
}
