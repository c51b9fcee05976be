package org.loomwright.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.StoredWorkOrder;
import org.loomwright.app.WorkOrderStore.Terms;
import org.loomwright.core.workorder.Move;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.loomwright.store.content.Words;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/** A work order: what is agreed, and where it stands. */
@Entity
@Table(name = "work_order")
class WorkOrderEntity {

    @Id private UUID id;

    @Column(updatable = false)
    private String number;

    @Column(updatable = false)
    private String revisionHash;

    @Column(updatable = false)
    private String customer;

    @Column(updatable = false)
    private String workshop;

    @Column(updatable = false)
    private @Nullable LocalDate dueDate;

    @Column(updatable = false)
    private String notes;

    private String status;
    private long version;

    @Column(updatable = false)
    private Instant createdAt;

    /** For the persistence provider, which fills in the fields. */
    @SuppressWarnings("NullAway.Init")
    protected WorkOrderEntity() {}

    WorkOrderEntity(UUID id, String number, Terms terms, Move first) {
        this.id = id;
        this.number = number;
        this.revisionHash = terms.revisionHash();
        this.customer = terms.customer();
        this.workshop = terms.workshop();
        this.dueDate = terms.dueDate();
        this.notes = terms.notes();
        this.status = Words.of(first.to());
        this.version = 1;
        this.createdAt = PageStart.kept(first.at());
    }

    long version() {
        return version;
    }

    StoredWorkOrder stored() {
        return new StoredWorkOrder(
                id,
                number,
                revisionHash,
                customer,
                workshop,
                dueDate,
                notes,
                Words.parse(WorkOrderStatus.class, status),
                version,
                createdAt);
    }
}
