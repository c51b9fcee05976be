package org.loomwright.core.workorder;

import org.jspecify.annotations.Nullable;

import java.time.Instant;

/**
 * One step in the life of a work order, as it is kept for good.
 *
 * @param from where it stood, or null when the work order was opened
 * @param to where it stands now
 * @param by who moved it
 * @param reason why; may be empty where the status needs no reason
 * @param at when
 */
public record Move(
        @Nullable WorkOrderStatus from, WorkOrderStatus to, String by, String reason, Instant at) {}
