package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.app.LoomContent;
import org.loomwright.app.LoomStore;
import org.loomwright.app.StoredLoom;
import org.loomwright.testing.DatabaseTest;
import org.loomwright.testing.RandomLooms;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

/** A loom far larger than any vehicle's still goes in and out quickly: no row by row. */
@DatabaseTest
class LargeLoomIntegrationTest {

    private static final Logger LOG = LoggerFactory.getLogger(LargeLoomIntegrationTest.class);
    private static final RandomLooms.Size LARGE = new RandomLooms.Size(3_000, 2_000, 10_000, 1_000);

    /** Ten times what a quiet machine takes, so that only a change of kind fails, not a busy machine. */
    private static final Duration MOST = Duration.ofSeconds(15);

    private final LoomStore looms;
    private final TransactionTemplate inTransaction;

    @Autowired
    LargeLoomIntegrationTest(LoomStore looms, TransactionTemplate inTransaction) {
        this.looms = looms;
        this.inTransaction = inTransaction;
    }

    @Test
    void tenThousandWiresGoInAndComeOutTheSame() {
        for (int seed = 1; seed <= 3; seed++) {
            LoomContent content = Contents.of(Contents.varied(seed, LARGE));
            long start = System.nanoTime();
            StoredLoom made = create(content);
            Duration storing = Duration.ofNanos(System.nanoTime() - start);
            start = System.nanoTime();
            StoredLoom read = looms.get(made.id());
            Duration loading = Duration.ofNanos(System.nanoTime() - start);
            LOG.info(
                    "10,000 wires stored in {} ms, loaded in {} ms",
                    storing.toMillis(),
                    loading.toMillis());
            assertThat(read.document().equals(content.document().ordered())).isTrue();
            assertThat(storing).isLessThan(MOST);
            assertThat(loading).isLessThan(MOST);
        }
    }

    private StoredLoom create(LoomContent content) {
        return Objects.requireNonNull(
                inTransaction.execute(
                        status ->
                                looms.create(
                                        UUID.randomUUID(),
                                        "large",
                                        content,
                                        Instant.parse("2026-03-04T12:00:00Z"))));
    }
}
