package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.loomwright.core.workorder.WorkOrderStatus.ACCEPTED;
import static org.loomwright.core.workorder.WorkOrderStatus.DECLINED;
import static org.loomwright.core.workorder.WorkOrderStatus.ENQUIRY;
import static org.loomwright.core.workorder.WorkOrderStatus.QUOTED;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.loomwright.app.IdempotencyKeys;
import org.loomwright.app.LoomContent;
import org.loomwright.app.NotFoundException;
import org.loomwright.app.Page;
import org.loomwright.app.PageKey;
import org.loomwright.app.RevisionStore;
import org.loomwright.app.SpecificationDraft;
import org.loomwright.app.SpecificationStore;
import org.loomwright.app.StaleVersionException;
import org.loomwright.app.StoredRevision;
import org.loomwright.app.StoredSpecification;
import org.loomwright.app.StoredWorkOrder;
import org.loomwright.app.WorkOrderStore;
import org.loomwright.core.workorder.Move;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.loomwright.testing.DatabaseTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

@DatabaseTest
class WorkOrderStoreIntegrationTest {

    private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
    private static final AtomicInteger HASHES = new AtomicInteger();

    private final SpecificationStore specifications;
    private final RevisionStore revisions;
    private final WorkOrderStore workOrders;
    private final IdempotencyKeys keys;
    private final TransactionTemplate transactions;

    @Autowired
    WorkOrderStoreIntegrationTest(
            SpecificationStore specifications,
            RevisionStore revisions,
            WorkOrderStore workOrders,
            IdempotencyKeys keys,
            TransactionTemplate transactions) {
        this.specifications = specifications;
        this.revisions = revisions;
        this.workOrders = workOrders;
        this.keys = keys;
        this.transactions = transactions;
    }

    @Test
    void aSpecificationChangesFromTheVersionThatWasRead() {
        StoredSpecification made = specify(Contents.small(1));
        assertThat(made.version()).isEqualTo(1);
        assertThat(specifications.get(made.id())).isEqualTo(made);
        SpecificationDraft second =
                new SpecificationDraft(
                        "second", Contents.small(2), "[{\"id\":\"A1\"}]", "{\"a\":1}", "[]");
        StoredSpecification changed =
                run(() -> specifications.change(made.id(), 1, second, NOON.plusSeconds(1)));
        assertThat(changed.version()).isEqualTo(2);
        assertThat(specifications.get(made.id())).isEqualTo(changed);
        assertThat(changed.draft().amendmentsJson()).isEqualTo("[{\"id\":\"A1\"}]");
        assertThat(changed.draft().stock().hash()).isEqualTo(Contents.small(2).hash());
        assertThatThrownBy(() -> run(() -> specifications.change(made.id(), 1, second, NOON)))
                .isInstanceOf(StaleVersionException.class);
    }

    @Test
    void textThatIsNoJsonIsRefused() {
        SpecificationDraft broken =
                new SpecificationDraft("broken", Contents.small(1), "[", "{}", "[]");
        assertThatThrownBy(
                        () ->
                                run(
                                        () ->
                                                specifications.create(
                                                        UUID.randomUUID(), null, broken, NOON)))
                .hasMessageContaining("amendments_json");
    }

    @Test
    void revisionsAreNumberedWithinTheirSpecification() {
        StoredSpecification specification = specify(Contents.small(3));
        StoredRevision first = freeze(specification);
        StoredRevision second = freeze(specification);
        assertThat(List.of(first.number(), second.number())).containsExactly(1, 2);
        assertThat(revisions.get(first.hash())).isEqualTo(first);
        assertThat(first.stockHash()).isEqualTo(Contents.small(3).hash());
        assertThat(first.amendedHash()).isEqualTo(Contents.small(4).hash());
        assertThat(revisions.listOf(specification.id())).containsExactly(second, first);
        assertThat(freeze(specify(Contents.small(3))).number()).isEqualTo(1);
        PageKey above = new PageKey(specification.createdAt(), specification.id());
        assertThat(
                        specifications
                                .list(
                                        new PageKey(above.createdAt().plusSeconds(1), above.id()),
                                        200)
                                .items())
                .filteredOn(line -> line.id().equals(specification.id()))
                .singleElement()
                .satisfies(line -> assertThat(line.revisions()).isEqualTo(2));
    }

    @Test
    void aRevisionOfNothingIsNotFound() {
        assertThatThrownBy(() -> run(() -> revisions.nextNumber(UUID.randomUUID())))
                .isInstanceOf(NotFoundException.class);
        assertThatThrownBy(() -> revisions.get("f".repeat(64)))
                .isInstanceOf(NotFoundException.class);
    }

    @Test
    void twoWhoFreezeAtOnceGetTwoNumbers() throws Exception {
        StoredSpecification specification = specify(Contents.small(5));
        List<Object> results = together(2, () -> freeze(specification).number());
        assertThat(results).containsExactlyInAnyOrder(1, 2);
    }

    @Test
    void workOrdersAreNumberedByYear() {
        StoredWorkOrder first = open(2031, null, NOON);
        StoredWorkOrder second = open(2031, LocalDate.of(2031, 2, 3), NOON);
        assertThat(first.number()).isEqualTo("WO-2031-0001");
        assertThat(second.number()).isEqualTo("WO-2031-0002");
        assertThat(open(2032, null, NOON).number()).isEqualTo("WO-2032-0001");
        assertThat(workOrders.get(second.id())).isEqualTo(second);
        assertThat(workOrders.findByNumber("WO-2031-0002")).contains(second);
        assertThat(second.dueDate()).isEqualTo(LocalDate.of(2031, 2, 3));
    }

    @Test
    void everyMoveIsKeptInOrder() {
        StoredWorkOrder job = open(2026, null, NOON);
        StoredWorkOrder quoted = move(job, 1, QUOTED);
        StoredWorkOrder accepted = move(quoted, 2, ACCEPTED);
        assertThat(accepted.status()).isEqualTo(ACCEPTED);
        assertThat(accepted.version()).isEqualTo(3);
        assertThat(workOrders.get(job.id())).isEqualTo(accepted);
        assertThat(workOrders.events(job.id()))
                .extracting(Move::from, Move::to)
                .containsExactly(
                        tuple(null, ENQUIRY), tuple(ENQUIRY, QUOTED), tuple(QUOTED, ACCEPTED));
        assertThat(workOrders.events(job.id()).getFirst())
                .isEqualTo(new Move(null, ENQUIRY, "restorer", "", NOON));
    }

    @Test
    void everyStatusHasItsPlace() {
        for (WorkOrderStatus status : WorkOrderStatus.values()) {
            StoredWorkOrder job =
                    run(
                            () ->
                                    workOrders.open(
                                            UUID.randomUUID(),
                                            2033,
                                            terms(null),
                                            new Move(null, status, "restorer", "", NOON)));
            assertThat(workOrders.get(job.id()).status()).isEqualTo(status);
            assertThat(workOrders.listStandingAt(status, null, 200).items()).contains(job);
        }
    }

    @Test
    void ofTwoMovesFromOneVersionOneIsStale() throws Exception {
        StoredWorkOrder job = open(2026, null, NOON);
        List<Object> results =
                together(
                        2,
                        () -> {
                            try {
                                return move(job, 1, DECLINED).version();
                            } catch (StaleVersionException e) {
                                return "%d not %d".formatted(e.actual(), e.expected());
                            }
                        });
        assertThat(results).containsExactlyInAnyOrder(2L, "2 not 1");
        assertThat(workOrders.events(job.id())).hasSize(2);
    }

    @Test
    void aMoveThatDoesNotFollowIsUndone() {
        StoredWorkOrder job = open(2026, null, NOON);
        Move leap = new Move(QUOTED, ACCEPTED, "restorer", "", NOON);
        assertThatThrownBy(() -> run(() -> workOrders.move(job.id(), 1, leap)))
                .hasStackTraceContaining("does not agree with its events");
        assertThat(workOrders.get(job.id())).isEqualTo(job);
    }

    @Test
    void workOrdersPageByKey() {
        Instant start = Instant.parse("2060-01-01T00:00:00Z");
        List<StoredWorkOrder> newestFirst = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            newestFirst.addFirst(open(2060, null, start.plusSeconds(i)));
        }
        PageKey top = new PageKey(start.plusSeconds(10), UUID.randomUUID());
        Page<StoredWorkOrder> first = workOrders.list(top, 2);
        Page<StoredWorkOrder> second = workOrders.list(first.nextKey(), 3);
        assertThat(first.items()).isEqualTo(newestFirst.subList(0, 2));
        assertThat(second.items()).isEqualTo(newestFirst.subList(2, 5));
    }

    @Test
    void aRequestThatIsSentTwiceIsRecordedOnce() {
        String key = UUID.randomUUID().toString();
        IdempotencyKeys.Answer answer = new IdempotencyKeys.Answer("a".repeat(64), "WO-1");
        IdempotencyKeys.Answer other = new IdempotencyKeys.Answer("b".repeat(64), "WO-2");
        assertThat(keys.find("open", key)).isEmpty();
        assertThat(run(() -> keys.tryRecord("open", key, answer, NOON))).isTrue();
        assertThat(run(() -> keys.tryRecord("open", key, other, NOON))).isFalse();
        assertThat(keys.find("open", key)).contains(answer);
        assertThat(keys.find("freeze", key)).isEmpty();
    }

    @Test
    void ofManyWhoRecordTheSameKeyOneIsFirst() throws Exception {
        String key = UUID.randomUUID().toString();
        IdempotencyKeys.Answer answer = new IdempotencyKeys.Answer("a".repeat(64), "WO-1");
        List<Object> results =
                together(4, () -> run(() -> keys.tryRecord("open", key, answer, NOON)));
        assertThat(results).containsExactlyInAnyOrder(true, false, false, false);
    }

    private static List<Object> together(int threads, Callable<Object> task) throws Exception {
        CountDownLatch start = new CountDownLatch(1);
        try (ExecutorService executor = Executors.newFixedThreadPool(threads)) {
            List<Future<Object>> futures = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                futures.add(
                        executor.submit(
                                () -> {
                                    start.await();
                                    return task.call();
                                }));
            }
            start.countDown();
            List<Object> results = new ArrayList<>();
            for (Future<Object> future : futures) {
                results.add(future.get());
            }
            return results;
        }
    }

    private StoredSpecification specify(LoomContent stock) {
        SpecificationDraft draft = new SpecificationDraft("first", stock, "[]", "{}", "[]");
        return run(() -> specifications.create(UUID.randomUUID(), null, draft, NOON));
    }

    private StoredRevision freeze(StoredSpecification specification) {
        return run(
                () ->
                        revisions.freeze(
                                new RevisionStore.Frozen(
                                        nextHash(),
                                        specification.id(),
                                        revisions.nextNumber(specification.id()),
                                        specification.draft().stock(),
                                        Contents.small(4),
                                        "{}",
                                        NOON,
                                        "restorer")));
    }

    private static String nextHash() {
        return "%064x".formatted(HASHES.incrementAndGet());
    }

    private WorkOrderStore.Terms terms(@Nullable LocalDate dueDate) {
        String hash = freeze(specify(Contents.small(6))).hash();
        return new WorkOrderStore.Terms(hash, "A. Restorer", "Tenter Lane", dueDate, "");
    }

    private StoredWorkOrder open(int year, @Nullable LocalDate dueDate, Instant at) {
        WorkOrderStore.Terms terms = terms(dueDate);
        Move first = new Move(null, ENQUIRY, "restorer", "", at);
        return run(() -> workOrders.open(UUID.randomUUID(), year, terms, first));
    }

    private StoredWorkOrder move(StoredWorkOrder job, long version, WorkOrderStatus to) {
        Move move = new Move(job.status(), to, "workshop", "said so", NOON);
        return run(() -> workOrders.move(job.id(), version, move));
    }

    private <T> T run(Supplier<T> work) {
        T result = transactions.execute(status -> work.get());
        if (result == null) {
            throw new AssertionError("nothing came back");
        }
        return result;
    }
}
