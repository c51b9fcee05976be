package org.loomwright.store;

import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Loom heads. */
interface LoomRepository extends Repository<LoomEntity, UUID> {

    Optional<LoomEntity> findById(UUID id);

    @Modifying(flushAutomatically = true, clearAutomatically = true)
    @Query(
            """
            update LoomEntity loom
            set loom.name = :name, loom.contentId = :contentId, loom.updatedAt = :at,
                loom.version = loom.version + 1
            where loom.id = :id and loom.version = :version
            """)
    int change(UUID id, long version, String name, long contentId, Instant at);
}
