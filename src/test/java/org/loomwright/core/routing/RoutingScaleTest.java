package org.loomwright.core.routing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.lang.management.ManagementFactory;
import java.util.Map;

/**
 * Cost must not grow with wires times nodes. On a chain of 2,000 segments 10,000 wires from end to end would be 20 million steps;
 * the limit is far below that and far above what it takes. Thread time, best of three, so that a busy machine does not fail it.
 */
class RoutingScaleTest {

    private static final int SEGMENTS = 2_000;
    private static final int WIRES = 10_000;
    private static final long MOST_NANOS = 500_000_000;

    @Test
    void tenThousandWiresOnTwoThousandSegmentsTakeWellUnderASecond() {
        Loom chain = chain();
        long best = Long.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            best = Math.min(best, nanos(chain));
        }
        assertThat(best).isLessThan(MOST_NANOS);
    }

    private static Loom chain() {
        LoomSketch sketch = new LoomSketch("N0");
        for (int i = 1; i <= SEGMENTS; i++) {
            sketch.segment("S" + i, "N" + (i - 1), "N" + i, 10);
        }
        sketch.device("NEAR", DeviceKind.SWITCH, "N0")
                .device("FAR", DeviceKind.LAMP, "N" + SEGMENTS);
        for (int i = 0; i < WIRES; i++) {
            sketch.wire("W" + i, "G", "NEAR/1", "FAR/1");
        }
        return sketch.loom();
    }

    private static long nanos(Loom loom) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int cuts =
                new CutLengths(
                                loom,
                                new Routes(loom),
                                TestCatalogue.get(),
                                Allowances.USUAL,
                                Map.of())
                        .all()
                        .size();
        assertThat(cuts).isEqualTo(WIRES);
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
    }
}
