package org.loomwright.store;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

import java.time.Instant;
import java.util.UUID;

/** A loom's head. */
@Entity
@Table(name = "loom")
class LoomEntity {

    @Id private UUID id;
    private String name;
    private long contentId;
    private long version;
    private Instant createdAt;
    private Instant updatedAt;

    /** For the persistence provider, which fills in the fields. */
    @SuppressWarnings("NullAway.Init")
    protected LoomEntity() {}

    LoomEntity(UUID id, String name, long contentId, Instant createdAt) {
        this.id = id;
        this.name = name;
        this.contentId = contentId;
        this.version = 1;
        this.createdAt = createdAt;
        this.updatedAt = createdAt;
    }

    UUID id() {
        return id;
    }

    String name() {
        return name;
    }

    long contentId() {
        return contentId;
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
