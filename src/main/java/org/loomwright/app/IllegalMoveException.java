package org.loomwright.app;

import org.loomwright.core.workorder.WorkOrderStatus;

import java.util.Set;

/** A work order cannot go there from where it stands. */
public final class IllegalMoveException extends RefusalException {

    private final String number;
    private final WorkOrderStatus from;
    private final WorkOrderStatus to;

    /**
     * @param number number of the work order
     * @param from where it stands
     * @param to where it was to go
     */
    public IllegalMoveException(String number, WorkOrderStatus from, WorkOrderStatus to) {
        super("work order %s cannot go from %s to %s".formatted(number, from, to));
        this.number = number;
        this.from = from;
        this.to = to;
    }

    /** @return number of the work order */
    public String number() {
        return number;
    }

    /** @return where it stands */
    public WorkOrderStatus from() {
        return from;
    }

    /** @return where it was to go */
    public WorkOrderStatus to() {
        return to;
    }

    /** @return where it could go instead */
    public Set<WorkOrderStatus> allowed() {
        return from.next();
    }
}
