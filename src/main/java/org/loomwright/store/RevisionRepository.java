package org.loomwright.store;

import org.springframework.data.repository.Repository;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Frozen revisions. */
interface RevisionRepository extends Repository<RevisionEntity, String> {

    Optional<RevisionEntity> findById(String hash);

    List<RevisionEntity> findBySpecificationIdOrderByNumberDesc(UUID specificationId);
}
