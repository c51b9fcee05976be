package org.loomwright.app;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.workorder.Move;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Opening work orders and moving them on. What a work order pins never changes; only its status moves. */
@Service
public class WorkOrders {

    private static final int LONGEST_PROMISE_YEARS = 5;

    private final WorkOrderStore store;
    private final RevisionStore revisions;
    private final OnceOnly onceOnly;
    private final Clock clock;
    private final IdSource ids;

    WorkOrders(
            WorkOrderStore store,
            RevisionStore revisions,
            OnceOnly onceOnly,
            Clock clock,
            IdSource ids) {
        this.store = store;
        this.revisions = revisions;
        this.onceOnly = onceOnly;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * @param terms what is agreed
     * @param by who opens it
     * @param request marks the request
     * @return the work order as an enquiry, or every fault of the terms
     */
    public Outcome<StoredWorkOrder> open(WorkOrderStore.Terms terms, String by, Request request) {
        return onceOnly.run(
                "open-work-order",
                request,
                () -> {
                    List<Finding> faults = faults(terms);
                    return faults.isEmpty()
                            ? Outcome.accepted(openNew(terms, by))
                            : Outcome.rejected(faults);
                },
                StoredWorkOrder::id,
                store::get);
    }

    private StoredWorkOrder openNew(WorkOrderStore.Terms terms, String by) {
        Move first = new Move(null, WorkOrderStatus.ENQUIRY, by, "", clock.instant());
        return store.open(ids.next(), today().getYear(), terms, first);
    }

    private List<Finding> faults(WorkOrderStore.Terms terms) {
        List<Finding> faults = new ArrayList<>();
        if (revisions.find(terms.revisionHash()).isEmpty()) {
            faults.add(
                    fault(
                            "work-order.revision-unknown",
                            "/revisionHash",
                            "There is no revision %s; freeze the specification first."
                                    .formatted(terms.revisionHash())));
        }
        LocalDate due = terms.dueDate();
        if (due != null
                && (due.isBefore(today())
                        || due.isAfter(today().plusYears(LONGEST_PROMISE_YEARS)))) {
            faults.add(
                    fault(
                            "work-order.due-date-not-sane",
                            "/dueDate",
                            "The due date is %s; it must lie between today, %s, and %d years from now."
                                    .formatted(due, today(), LONGEST_PROMISE_YEARS)));
        }
        return faults;
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    private static Finding fault(String code, String pointer, String text) {
        return Finding.fault(code, new Subject(ThingKind.WORK_ORDER, "", pointer), text);
    }

    /**
     * @param id of a work order
     * @param version the version that the move was decided from
     * @param to where it is to go
     * @param by who moves it
     * @param reason why; needed where {@link WorkOrderStatus#needsReason} says so
     * @return the moved work order, or why the move is not complete
     * @throws NotFoundException if there is no such work order
     * @throws IllegalMoveException if it cannot go there from where it stands
     * @throws StaleVersionException if it was moved meanwhile
     */
    @Transactional
    public Outcome<StoredWorkOrder> move(
            UUID id, long version, WorkOrderStatus to, String by, String reason) {
        StoredWorkOrder order = store.get(id);
        if (order.version() != version) {
            throw new StaleVersionException("work order", order.number(), version, order.version());
        }
        if (!order.status().canMoveTo(to)) {
            throw new IllegalMoveException(order.number(), order.status(), to);
        }
        if (to.needsReason() && reason.isBlank()) {
            return Outcome.rejected(
                    List.of(
                            fault(
                                    "work-order.reason-missing",
                                    "/reason",
                                    "A move to %s needs a reason.".formatted(to.words()))));
        }
        Move move = new Move(order.status(), to, by, reason, clock.instant());
        return Outcome.accepted(store.move(id, version, move));
    }

    /**
     * @param id of a work order
     * @return the work order
     * @throws NotFoundException if there is no such work order
     */
    @Transactional(readOnly = true)
    public StoredWorkOrder get(UUID id) {
        return store.get(id);
    }

    /**
     * @param id of a work order
     * @return every move that it made, the first one first
     * @throws NotFoundException if there is no such work order
     */
    @Transactional(readOnly = true)
    public List<Move> moves(UUID id) {
        store.get(id);
        return store.events(id);
    }

    /** @return work orders, newest first, only those that stand at {@code status} unless it is null */
    @Transactional(readOnly = true)
    public Page<StoredWorkOrder> list(
            @Nullable WorkOrderStatus status, @Nullable PageKey after, int size) {
        return status == null ? store.list(after, size) : store.listStandingAt(status, after, size);
    }
}
