package org.loomwright.store;

import jakarta.persistence.EntityManager;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.NotFoundException;
import org.loomwright.app.Page;
import org.loomwright.app.PageKey;
import org.loomwright.app.StoredWorkOrder;
import org.loomwright.app.WorkOrderStore;
import org.loomwright.core.workorder.Move;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.loomwright.store.content.Words;
import org.springframework.data.domain.Limit;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** Work orders and their events, which the database compares with one another at the end of every transaction. */
@Component
class JpaWorkOrderStore implements WorkOrderStore {

    private static final String THING = "work order";

    private final EntityManager entities;
    private final WorkOrderRepository workOrders;
    private final JdbcClient jdbc;

    JpaWorkOrderStore(EntityManager entities, WorkOrderRepository workOrders, JdbcClient jdbc) {
        this.entities = entities;
        this.workOrders = workOrders;
        this.jdbc = jdbc;
    }

    @Override
    public StoredWorkOrder open(UUID id, int year, Terms terms, Move first) {
        WorkOrderEntity workOrder = new WorkOrderEntity(id, nextNumber(year), terms, first);
        entities.persist(workOrder);
        entities.persist(new WorkOrderEventEntity(id, workOrder.version(), first));
        entities.flush();
        return workOrder.stored();
    }

    private String nextNumber(int year) {
        int next =
                jdbc.sql(
                                """
                                insert into work_order_counter as counter (year, last_number)
                                values (?, 1)
                                on conflict (year)
                                do update set last_number = counter.last_number + 1
                                returning last_number
                                """)
                        .param(year)
                        .query(Integer.class)
                        .single();
        return String.format(Locale.ROOT, "WO-%04d-%04d", year, next);
    }

    @Override
    public StoredWorkOrder move(UUID id, long version, Move move) {
        int rows = workOrders.move(id, version, Words.of(move.to()));
        Optional<WorkOrderEntity> workOrder = workOrders.findById(id);
        ChangedRows.judge(rows, THING, id, version, workOrder.map(WorkOrderEntity::version));
        entities.persist(new WorkOrderEventEntity(id, version + 1, move));
        entities.flush();
        return workOrder.orElseThrow().stored();
    }

    @Override
    public Optional<StoredWorkOrder> find(UUID id) {
        return workOrders.findById(id).map(WorkOrderEntity::stored);
    }

    @Override
    public Optional<StoredWorkOrder> findByNumber(String number) {
        return workOrders.findByNumber(number).map(WorkOrderEntity::stored);
    }

    @Override
    public StoredWorkOrder get(UUID id) {
        return find(id).orElseThrow(() -> new NotFoundException(THING, id.toString()));
    }

    @Override
    public List<Move> events(UUID id) {
        return workOrders.events(id).stream().map(WorkOrderEventEntity::move).toList();
    }

    @Override
    public Page<StoredWorkOrder> list(@Nullable PageKey after, int size) {
        PageKey start = PageStart.of(after);
        return page(workOrders.list(start.createdAt(), start.id(), oneMore(size)), size);
    }

    @Override
    public Page<StoredWorkOrder> listStandingAt(
            WorkOrderStatus status, @Nullable PageKey after, int size) {
        PageKey start = PageStart.of(after);
        return page(
                workOrders.listStandingAt(
                        Words.of(status), start.createdAt(), start.id(), oneMore(size)),
                size);
    }

    private static Limit oneMore(int size) {
        return Limit.of(Page.checkSize(size) + 1);
    }

    private static Page<StoredWorkOrder> page(List<WorkOrderEntity> rows, int size) {
        return Page.of(
                rows.stream().map(WorkOrderEntity::stored).toList(), size, StoredWorkOrder::key);
    }
}
