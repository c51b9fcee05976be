package org.loomwright.store;

import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Specification heads. */
interface SpecificationRepository extends Repository<SpecificationEntity, UUID> {

    Optional<SpecificationEntity> findById(UUID id);

    @Modifying(flushAutomatically = true, clearAutomatically = true)
    @Query(
            """
            update SpecificationEntity specification
            set specification.title = :title, specification.stockContentId = :stockContentId,
                specification.amendmentsJson = :amendmentsJson,
                specification.settingsJson = :settingsJson,
                specification.acceptedJson = :acceptedJson,
                specification.updatedAt = :at, specification.version = specification.version + 1
            where specification.id = :id and specification.version = :version
            """)
    int change(
            UUID id,
            long version,
            String title,
            long stockContentId,
            String amendmentsJson,
            String settingsJson,
            String acceptedJson,
            Instant at);
}
