package org.loomwright.core.amendment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.RandomLooms;
import org.loomwright.testing.RandomLooms.Size;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** A thousand amendments on the largest loom anyone will bring; the best of three runs counts, the first one being cold. */
class AmendmentScaleTest {

    /** Time of this thread alone, so that a busy machine does not count. */
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @Test
    void aThousandAmendmentsOnTenThousandWiresTakeWellUnderASecond() {
        Loom stock = RandomLooms.of(1, new Size(2_000, 2_000, 10_000, 2_000));
        List<Amendment> amendments = RandomAmendments.independent(stock, 1, 1_100);

        List<Duration> taken =
                IntStream.range(0, 3).mapToObj(run -> timed(stock, amendments)).toList();

        assertThat(amendments).hasSizeGreaterThan(1_000);
        assertThat(Collections.min(taken)).isLessThan(Duration.ofSeconds(1));
    }

    private static Duration timed(Loom stock, List<Amendment> amendments) {
        long start = THREADS.getCurrentThreadCpuTime();
        AmendedLoom amended = Amending.accept(stock, amendments);
        Duration taken = Duration.ofNanos(THREADS.getCurrentThreadCpuTime() - start);
        assertThat(amended.origins()).isNotEmpty();
        return taken;
    }
}
