package org.loomwright.core.bundle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.RandomLooms;

class PackingWorkTest {

    @Test
    void aVehiclesLoomIsFarFromTooMuch() {
        Loom car = RandomLooms.of(1, RandomLooms.Size.CAR);
        assertThat(PackingWork.of(car, Effort.THOROUGH).isTooMuch()).isFalse();
        assertThat(PackingWork.of(car, Effort.THOROUGH).units())
                .isBetween(
                        PackingWork.of(car, Effort.NORMAL).units() * 10 - 10,
                        PackingWork.of(car, Effort.NORMAL).units() * 10 + 10);
    }

    @Test
    void aBundleThatRunsThroughManySegmentsCountsOnce() {
        LoomSketch sketch = new LoomSketch("N0").segment("S1", "N0", "N1", 10);
        sketch.segment("S2", "N1", "N2", 10);
        sketch.device("A", DeviceKind.SWITCH, "N0").device("B", DeviceKind.LAMP, "N2");
        for (int i = 0; i < 4; i++) {
            sketch.wire("W" + i, "G", "A/1", "B/1");
        }
        assertThat(PackingWork.of(sketch.loom(), Effort.NORMAL)).isEqualTo(new PackingWork(8));
    }

    @Test
    void hundredsOfDifferentBundlesOfHundredsOfWiresAreTooMuch() {
        LoomSketch sketch = new LoomSketch("N0").device("A", DeviceKind.SWITCH, "N0");
        int segments = 1_000;
        for (int i = 1; i <= segments; i++) {
            sketch.segment("S" + i, "N" + (i - 1), "N" + i, 10);
            sketch.device("D" + i, DeviceKind.LAMP, "N" + i);
            sketch.wire("W" + i, "G", "A/1", "D" + i + "/1");
        }
        assertThat(PackingWork.of(sketch.loom(), Effort.NORMAL).isTooMuch()).isTrue();
    }
}
