package org.loomwright.app;

import java.time.Instant;
import java.util.UUID;

/**
 * A frozen revision. The contents that its hashes name are to be had from {@link LoomContents}.
 *
 * @param hash names it everywhere: SHA-256 of its document
 * @param specificationId the specification that it was frozen from
 * @param number 1 for the first of its specification
 * @param stockHash names the loom that it starts from
 * @param amendedHash names the loom that it arrives at
 * @param document canonical JSON of the whole revision
 * @param frozenAt when
 * @param frozenBy by whom
 */
public record StoredRevision(
        String hash,
        UUID specificationId,
        int number,
        String stockHash,
        String amendedHash,
        String document,
        Instant frozenAt,
        String frozenBy) {}
