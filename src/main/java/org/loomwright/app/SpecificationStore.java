package org.loomwright.app;

import org.jspecify.annotations.Nullable;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Keeps specifications while they are being written. Everything that writes needs a transaction around it. */
public interface SpecificationStore {

    /**
     * A specification as a line in a list.
     *
     * @param id its id
     * @param title what it is called
     * @param loomId the loom that it was taken from, or null
     * @param stockHash names its stock content
     * @param revisions how many revisions were frozen
     * @param version its version
     * @param createdAt when it was made
     * @param updatedAt when it was last changed
     */
    record Summary(
            UUID id,
            String title,
            @Nullable UUID loomId,
            String stockHash,
            int revisions,
            long version,
            Instant createdAt,
            Instant updatedAt) {

        /** @return its place in the list */
        public PageKey key() {
            return new PageKey(createdAt, id);
        }
    }

    /**
     * @param id a new id
     * @param loomId the loom that the stock content was taken from, or null
     * @param draft what it says
     * @param at now
     * @return the specification, in version 1
     */
    StoredSpecification create(
            UUID id, @Nullable UUID loomId, SpecificationDraft draft, Instant at);

    /**
     * @param id of a specification
     * @param version the version that the change was made from
     * @param draft what it says from now on
     * @param at now
     * @return the changed specification
     * @throws NotFoundException if there is no such specification
     * @throws StaleVersionException if it was changed meanwhile
     */
    StoredSpecification change(UUID id, long version, SpecificationDraft draft, Instant at);

    /** @return the specification, if there is one with this id */
    Optional<StoredSpecification> find(UUID id);

    /**
     * @param id of a specification
     * @return the specification
     * @throws NotFoundException if there is no such specification
     */
    StoredSpecification get(UUID id);

    /**
     * @param after the place where the page starts, null for the newest
     * @param size things on the page
     * @return specifications, newest first
     */
    Page<Summary> list(@Nullable PageKey after, int size);
}
