package org.loomwright.core.workorder;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Where a job stands. The allowed moves stand in one table at the foot of this file. */
public enum WorkOrderStatus {
    /** The restorer has asked. */
    ENQUIRY,
    /** The workshop has named its price. */
    QUOTED,
    /** The restorer has ordered. */
    ACCEPTED,
    /** The workshop waits for the loom. */
    AWAITING_LOOM,
    /** The loom is there and is being counted and compared with the revision. */
    LOOM_RECEIVED,
    /** The bare, tied loom is finished; no cover goes on before the customer has approved the photographs. */
    AT_HOLD_POINT,
    /** Being repaired, added to or covered. */
    IN_WORK,
    /** Waiting for somebody, with the reason. */
    ON_HOLD,
    /** Being tested. */
    TESTING,
    /** Finished, tested, packed. */
    READY,
    /** On its way back. */
    DISPATCHED,
    /** Done. */
    CLOSED,
    /** The restorer or the workshop said no before an order. */
    DECLINED,
    /** Stopped after an order. */
    CANCELLED;

    private static final Map<WorkOrderStatus, Set<WorkOrderStatus>> MOVES = moves();
    private static final Set<WorkOrderStatus> NEED_A_REASON =
            Collections.unmodifiableSet(EnumSet.of(ON_HOLD, DECLINED, CANCELLED));

    /** @return the statuses that a job may go to from here, in their order; none when it is over */
    public Set<WorkOrderStatus> next() {
        return MOVES.getOrDefault(this, Set.of());
    }

    /**
     * @param other another status
     * @return whether a job may go there from here
     */
    public boolean canMoveTo(WorkOrderStatus other) {
        return next().contains(other);
    }

    /** @return whether a move to here must say why */
    public boolean needsReason() {
        return NEED_A_REASON.contains(this);
    }

    /** @return whether no move leads on from here */
    public boolean isOver() {
        return next().isEmpty();
    }

    /** @return the status as a reader sees it, for example {@code awaiting loom} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Map<WorkOrderStatus, Set<WorkOrderStatus>> moves() {
        Map<WorkOrderStatus, Set<WorkOrderStatus>> table = new EnumMap<>(WorkOrderStatus.class);
        table.put(ENQUIRY, EnumSet.of(QUOTED, DECLINED));
        table.put(QUOTED, EnumSet.of(ACCEPTED, DECLINED));
        table.put(ACCEPTED, EnumSet.of(AWAITING_LOOM, LOOM_RECEIVED, ON_HOLD, CANCELLED));
        table.put(AWAITING_LOOM, EnumSet.of(LOOM_RECEIVED, ON_HOLD, CANCELLED));
        table.put(LOOM_RECEIVED, EnumSet.of(IN_WORK, ON_HOLD, CANCELLED));
        table.put(IN_WORK, EnumSet.of(AT_HOLD_POINT, TESTING, ON_HOLD, CANCELLED));
        table.put(AT_HOLD_POINT, EnumSet.of(IN_WORK, ON_HOLD, CANCELLED));
        table.put(
                ON_HOLD,
                EnumSet.of(
                        AWAITING_LOOM, LOOM_RECEIVED, AT_HOLD_POINT, IN_WORK, TESTING, CANCELLED));
        table.put(TESTING, EnumSet.of(READY, IN_WORK, ON_HOLD));
        table.put(READY, EnumSet.of(DISPATCHED, TESTING));
        table.put(DISPATCHED, EnumSet.of(CLOSED));
        table.replaceAll((from, to) -> Collections.unmodifiableSet(to));
        return Collections.unmodifiableMap(table);
    }
}
