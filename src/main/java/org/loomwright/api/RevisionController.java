package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;

import org.loomwright.app.Revisions;
import org.loomwright.app.StoredRevision;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

import java.time.Instant;
import java.util.UUID;

/** Frozen revisions. */
@RestController
@Tag(name = "Revisions", description = "Specifications frozen with every figure")
@RequestMapping(path = "/api/revisions", produces = MediaType.APPLICATION_JSON_VALUE)
class RevisionController {

    private final Revisions revisions;

    RevisionController(Revisions revisions) {
        this.revisions = revisions;
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

    @Operation(summary = "Read what is known of a revision")
    @GetMapping("/{hash}")
    ResponseEntity<RevisionAnswer> get(@PathVariable String hash) {
        StoredRevision revision = revisions.get(hash);
        return ResponseEntity.ok()
                .eTag("\"" + revision.hash() + "\"")
                .body(RevisionAnswer.of(revision));
    }

    @Operation(
            summary = "Read a revision whole",
            description =
                    "The canonical JSON (RFC 8785) whose SHA-256 is the revision's hash: stock"
                        + " loom, amendments, settings, amended loom and every figure as frozen.")
    @GetMapping("/{hash}/document")
    ResponseEntity<String> document(@PathVariable String hash) {
        StoredRevision revision = revisions.get(hash);
        return ResponseEntity.ok().eTag("\"" + revision.hash() + "\"").body(revision.document());
    }
}
