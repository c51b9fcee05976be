package org.loomwright.app;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.workorder.WorkOrderStatus;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A work order as it stands.
 *
 * @param id its id
 * @param number the number that people use, for example {@code WO-2026-0001}
 * @param revisionHash the revision that it pins
 * @param customer whose loom it is
 * @param workshop who does the work
 * @param dueDate promised for, or null where nothing was promised
 * @param notes anything else that was agreed
 * @param status where the job stands
 * @param version 1 when opened, one more with every move
 * @param createdAt when it was opened
 */
public record StoredWorkOrder(
        UUID id,
        String number,
        String revisionHash,
        String customer,
        String workshop,
        @Nullable LocalDate dueDate,
        String notes,
        WorkOrderStatus status,
        long version,
        Instant createdAt) {

    /** @return its place in the list */
    public PageKey key() {
        return new PageKey(createdAt, id);
    }
}
