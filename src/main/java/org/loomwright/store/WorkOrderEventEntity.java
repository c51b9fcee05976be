package org.loomwright.store;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;

import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.loomwright.core.workorder.Move;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.loomwright.store.content.Words;

import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;

/** One move of a work order. */
@Entity
@Immutable
@Table(name = "work_order_event")
class WorkOrderEventEntity {

    @EmbeddedId private Key key;
    private @Nullable String fromStatus;
    private String toStatus;
    private String byWhom;
    private String reason;
    private Instant happenedAt;

    /**
     * @param workOrderId the work order
     * @param sequence 1 for its opening; the version that the work order had from then on
     */
    @Embeddable
    record Key(UUID workOrderId, long sequence) implements Serializable {}

    /** For the persistence provider, which fills in the fields. */
    @SuppressWarnings("NullAway.Init")
    protected WorkOrderEventEntity() {}

    WorkOrderEventEntity(UUID workOrderId, long sequence, Move move) {
        WorkOrderStatus from = move.from();
        this.key = new Key(workOrderId, sequence);
        this.fromStatus = from == null ? null : Words.of(from);
        this.toStatus = Words.of(move.to());
        this.byWhom = move.by();
        this.reason = move.reason();
        this.happenedAt = PageStart.kept(move.at());
    }

    Move move() {
        return new Move(
                fromStatus == null ? null : Words.parse(WorkOrderStatus.class, fromStatus),
                Words.parse(WorkOrderStatus.class, toStatus),
                byWhom,
                reason,
                happenedAt);
    }
}
