package org.loomwright.store;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

import org.hibernate.annotations.Immutable;
import org.loomwright.app.RevisionStore.Frozen;

import java.time.Instant;
import java.util.UUID;

/** A frozen revision. */
@Entity
@Immutable
@Table(name = "revision")
class RevisionEntity {

    @Id private String hash;
    private UUID specificationId;
    private int number;
    private long stockContentId;
    private long amendedContentId;
    private String document;
    private Instant frozenAt;
    private String frozenBy;

    /** For the persistence provider, which fills in the fields. */
    @SuppressWarnings("NullAway.Init")
    protected RevisionEntity() {}

    RevisionEntity(Frozen frozen, long stockContentId, long amendedContentId) {
        this.hash = frozen.hash();
        this.specificationId = frozen.specificationId();
        this.number = frozen.number();
        this.stockContentId = stockContentId;
        this.amendedContentId = amendedContentId;
        this.document = frozen.document();
        this.frozenAt = PageStart.kept(frozen.frozenAt());
        this.frozenBy = frozen.frozenBy();
    }

    String hash() {
        return hash;
    }

    UUID specificationId() {
        return specificationId;
    }

    int number() {
        return number;
    }

    long stockContentId() {
        return stockContentId;
    }

    long amendedContentId() {
        return amendedContentId;
    }

    String document() {
        return document;
    }

    Instant frozenAt() {
        return frozenAt;
    }

    String frozenBy() {
        return frozenBy;
    }
}
