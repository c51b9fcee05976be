package org.loomwright.app;

import org.loomwright.core.loom.LoomDocument;

import java.time.Instant;
import java.util.UUID;

/**
 * A loom as it stands.
 *
 * @param id its id
 * @param name what it is called in lists
 * @param contentHash names its content
 * @param document its content, ordered
 * @param version 1 when made, one more with every change
 * @param createdAt when it was made
 * @param updatedAt when it was last changed
 */
public record StoredLoom(
        UUID id,
        String name,
        String contentHash,
        LoomDocument document,
        long version,
        Instant createdAt,
        Instant updatedAt) {}
