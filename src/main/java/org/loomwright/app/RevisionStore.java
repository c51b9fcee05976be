package org.loomwright.app;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps frozen revisions for good. Everything that writes needs a transaction around it. */
public interface RevisionStore {

    /**
     * What is to be frozen.
     *
     * @param hash SHA-256 of the document
     * @param specificationId of which specification
     * @param number what {@link #nextNumber} gave
     * @param stock the loom that it starts from
     * @param amended the loom that it arrives at
     * @param document canonical JSON of the whole revision
     * @param frozenAt now
     * @param frozenBy by whom
     */
    record Frozen(
            String hash,
            UUID specificationId,
            int number,
            LoomContent stock,
            LoomContent amended,
            String document,
            Instant frozenAt,
            String frozenBy) {}

    /**
     * Keeps everybody else from freezing or changing this specification until the transaction ends.
     *
     * @param specificationId of a specification
     * @return the number of its next revision
     * @throws NotFoundException if there is no such specification
     */
    int nextNumber(UUID specificationId);

    /**
     * @param revision a revision that is not kept yet
     * @return the revision as kept
     */
    StoredRevision freeze(Frozen revision);

    /** @return the revision, if there is one with this hash */
    Optional<StoredRevision> find(String hash);

    /**
     * @param hash of a revision
     * @return the revision
     * @throws NotFoundException if there is no such revision
     */
    StoredRevision get(String hash);

    /**
     * @param specificationId of a specification
     * @return its revisions, newest first; they are frozen by hand, so there are few
     */
    List<StoredRevision> listOf(UUID specificationId);
}
