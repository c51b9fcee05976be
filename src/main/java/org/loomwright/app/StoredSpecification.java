package org.loomwright.app;

import org.jspecify.annotations.Nullable;

import java.time.Instant;
import java.util.UUID;

/**
 * A specification as it stands.
 *
 * @param id its id
 * @param loomId the loom that its stock content was taken from, or null where there is none
 * @param draft what it says
 * @param version 1 when made, one more with every change
 * @param createdAt when it was made
 * @param updatedAt when it was last changed
 */
public record StoredSpecification(
        UUID id,
        @Nullable UUID loomId,
        SpecificationDraft draft,
        long version,
        Instant createdAt,
        Instant updatedAt) {}
