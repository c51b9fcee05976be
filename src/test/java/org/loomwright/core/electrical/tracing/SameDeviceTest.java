package org.loomwright.core.electrical.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

/** A wire may join two points of one device, a bridge on a fuse box for example. */
class SameDeviceTest {

    @Test
    void aBridgeBetweenTwoPointsOfOneDeviceIsTraced() {
        Loom loom =
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 100)
                        .device("D1", DeviceKind.JOINT, "N1", "N2")
                        .wire("W1", "N", "D1/1", "D1/2")
                        .loom();
        Tracing tracing = Tracing.of(loom, TestCatalogue.get(), ElectricalFiles.behaviours());
        assertThat(tracing.get("W1").role()).isEqualTo(Role.LOOSE);
        assertThat(tracing.get("W1").serves()).isEmpty();
    }
}
