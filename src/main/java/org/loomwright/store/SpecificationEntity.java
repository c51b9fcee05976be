package org.loomwright.store;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.SpecificationDraft;

import java.time.Instant;
import java.util.UUID;

/** A specification's head. */
@Entity
@Table(name = "specification")
class SpecificationEntity {

    @Id private UUID id;
    private String title;
    private long stockContentId;
    private @Nullable UUID loomId;
    private String amendmentsJson;
    private String settingsJson;
    private String acceptedJson;
    private long version;
    private Instant createdAt;
    private Instant updatedAt;

    /** For the persistence provider, which fills in the fields. */
    @SuppressWarnings("NullAway.Init")
    protected SpecificationEntity() {}

    SpecificationEntity(
            UUID id,
            @Nullable UUID loomId,
            SpecificationDraft draft,
            long stockContentId,
            Instant createdAt) {
        this.id = id;
        this.loomId = loomId;
        this.title = draft.title();
        this.stockContentId = stockContentId;
        this.amendmentsJson = draft.amendmentsJson();
        this.settingsJson = draft.settingsJson();
        this.acceptedJson = draft.acceptedJson();
        this.version = 1;
        this.createdAt = createdAt;
        this.updatedAt = createdAt;
    }

    UUID id() {
        return id;
    }

    String title() {
        return title;
    }

    long stockContentId() {
        return stockContentId;
    }

    @Nullable UUID loomId() {
        return loomId;
    }

    String amendmentsJson() {
        return amendmentsJson;
    }

    String settingsJson() {
        return settingsJson;
    }

    String acceptedJson() {
        return acceptedJson;
    }

    long version() {
        return version;
    }

    Instant createdAt() {
        return createdAt;
    }

    Instant updatedAt() {
        return updatedAt;
    }
}
