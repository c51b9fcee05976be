package org.loomwright.app;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.workorder.Move;
import org.loomwright.core.workorder.WorkOrderStatus;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps work orders and their events. Everything that writes needs a transaction around it. */
public interface WorkOrderStore {

    /**
     * What is agreed when a work order is opened. None of it changes later.
     *
     * @param revisionHash the revision that it pins
     * @param customer whose loom it is
     * @param workshop who does the work
     * @param dueDate promised for, or null where nothing was promised
     * @param notes anything else
     */
    record Terms(
            String revisionHash,
            String customer,
            String workshop,
            @Nullable LocalDate dueDate,
            String notes) {}

    /**
     * @param id a new id
     * @param year the year that goes into its number
     * @param terms what is agreed
     * @param first its first event, coming from no status
     * @return the work order, in version 1
     */
    StoredWorkOrder open(UUID id, int year, Terms terms, Move first);

    /**
     * @param id of a work order
     * @param version the version that the move was decided from
     * @param move an allowed move from its present status
     * @return the moved work order
     * @throws NotFoundException if there is no such work order
     * @throws StaleVersionException if it was moved meanwhile
     */
    StoredWorkOrder move(UUID id, long version, Move move);

    /** @return the work order, if there is one with this id */
    Optional<StoredWorkOrder> find(UUID id);

    /** @return the work order, if there is one with this number */
    Optional<StoredWorkOrder> findByNumber(String number);

    /**
     * @param id of a work order
     * @return the work order
     * @throws NotFoundException if there is no such work order
     */
    StoredWorkOrder get(UUID id);

    /**
     * @param id of a work order
     * @return its events in their order, none if there is no such work order
     */
    List<Move> events(UUID id);

    /**
     * @param after the place where the page starts, null for the newest
     * @param size things on the page
     * @return work orders, newest first
     */
    Page<StoredWorkOrder> list(@Nullable PageKey after, int size);

    /**
     * @param status where they stand
     * @param after the place where the page starts, null for the newest
     * @param size things on the page
     * @return the work orders that stand there, newest first
     */
    Page<StoredWorkOrder> listStandingAt(WorkOrderStatus status, @Nullable PageKey after, int size);
}
