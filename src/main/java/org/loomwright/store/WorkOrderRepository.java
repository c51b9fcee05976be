package org.loomwright.store;

import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Work orders with their events. */
interface WorkOrderRepository extends Repository<WorkOrderEntity, UUID> {

    Optional<WorkOrderEntity> findById(UUID id);

    Optional<WorkOrderEntity> findByNumber(String number);

    @Modifying(flushAutomatically = true, clearAutomatically = true)
    @Query(
            """
            update WorkOrderEntity job
            set job.status = :to, job.version = job.version + 1
            where job.id = :id and job.version = :version
            """)
    int move(UUID id, long version, String to);

    @Query(
            """
            select event from WorkOrderEventEntity event
            where event.key.workOrderId = :id
            order by event.key.sequence
            """)
    List<WorkOrderEventEntity> events(UUID id);

    @Query(
            """
            select job from WorkOrderEntity job
            where (job.createdAt, job.id) < (:createdAt, :id)
            order by job.createdAt desc, job.id desc
            """)
    List<WorkOrderEntity> list(Instant createdAt, UUID id, Limit most);

    @Query(
            """
            select job from WorkOrderEntity job
            where job.status = :status and (job.createdAt, job.id) < (:createdAt, :id)
            order by job.createdAt desc, job.id desc
            """)
    List<WorkOrderEntity> listStandingAt(String status, Instant createdAt, UUID id, Limit most);
}
