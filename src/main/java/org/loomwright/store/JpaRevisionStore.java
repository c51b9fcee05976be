package org.loomwright.store;

import jakarta.persistence.EntityManager;

import org.loomwright.app.NotFoundException;
import org.loomwright.app.RevisionStore;
import org.loomwright.app.StoredRevision;
import org.loomwright.store.content.ContentTables;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Frozen revisions, and the counting of them. */
@Component
class JpaRevisionStore implements RevisionStore {

    private final EntityManager entities;
    private final RevisionRepository revisions;
    private final ContentTables contents;
    private final JdbcClient jdbc;

    JpaRevisionStore(
            EntityManager entities,
            RevisionRepository revisions,
            ContentTables contents,
            JdbcClient jdbc) {
        this.entities = entities;
        this.revisions = revisions;
        this.contents = contents;
        this.jdbc = jdbc;
    }

    @Override
    public int nextNumber(UUID specificationId) {
        lock(specificationId);
        return jdbc.sql(
                        """
                        select coalesce(max(number), 0) + 1 from revision where specification_id = ?
                        """)
                .param(specificationId)
                .query(Integer.class)
                .single();
    }

    private void lock(UUID specificationId) {
        Optional<Long> locked =
                jdbc.sql("select version from specification where id = ? for update")
                        .param(specificationId)
                        .query(Long.class)
                        .optional();
        if (locked.isEmpty()) {
            throw new NotFoundException(JpaSpecificationStore.THING, specificationId.toString());
        }
    }

    @Override
    public StoredRevision freeze(Frozen revision) {
        RevisionEntity entity =
                new RevisionEntity(
                        revision,
                        contents.keep(revision.stock()),
                        contents.keep(revision.amended()));
        entities.persist(entity);
        entities.flush();
        return stored(entity);
    }

    @Override
    public Optional<StoredRevision> find(String hash) {
        return revisions.findById(hash).map(this::stored);
    }

    @Override
    public StoredRevision get(String hash) {
        return find(hash).orElseThrow(() -> new NotFoundException("revision", hash));
    }

    @Override
    public List<StoredRevision> listOf(UUID specificationId) {
        return revisions.findBySpecificationIdOrderByNumberDesc(specificationId).stream()
                .map(this::stored)
                .toList();
    }

    private StoredRevision stored(RevisionEntity revision) {
        return new StoredRevision(
                revision.hash(),
                revision.specificationId(),
                revision.number(),
                contents.hashOf(revision.stockContentId()),
                contents.hashOf(revision.amendedContentId()),
                revision.document(),
                revision.frozenAt(),
                revision.frozenBy());
    }
}
