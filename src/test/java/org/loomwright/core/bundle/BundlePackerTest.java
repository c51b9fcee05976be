package org.loomwright.core.bundle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.loomwright.core.geometry.packing.Effort;
import org.loomwright.core.quantity.Length;

import java.util.Collections;
import java.util.List;

class BundlePackerTest {

    private final BundlePacker packer = new BundlePacker(2);

    private static List<Length> wires(int count, long diameterUm) {
        return Collections.nCopies(count, Length.ofMicrometres(diameterUm));
    }

    private PackedBundle pack(List<Length> diameters) {
        return packer.pack(diameters, Effort.NORMAL);
    }

    @Test
    void noWiresHaveNoDiameter() {
        assertThat(pack(List.of()).tight()).isEqualTo(Length.ZERO);
    }

    @Test
    void oneWireIsItsOwnBundle() {
        assertThat(pack(wires(1, 2_700)).tight()).isEqualTo(Length.ofMicrometres(2_700));
    }

    @Test
    void twoWiresLieSideBySide() {
        PackedBundle packed =
                pack(List.of(Length.ofMicrometres(2_700), Length.ofMicrometres(3_200)));
        assertThat(packed.tight()).isEqualTo(Length.ofMicrometres(5_900));
        assertThat(packed.proved()).isTrue();
    }

    /** Exact: six round one, three diameters (W1). */
    @Test
    void sevenEqualWiresAreThreeDiametersThick() {
        assertThat(pack(wires(7, 2_500)).tight().toDoubleMillimetres())
                .isCloseTo(7.5, within(0.001));
    }

    @Test
    void theDiameterIsNeverUnderstated() {
        PackedBundle packed = pack(wires(19, 2_000));
        assertThat(packed.tight().micrometres()).isGreaterThanOrEqualTo(9_727);
        assertThat(packed.lowerBound()).isLessThanOrEqualTo(packed.tight());
    }

    @Test
    void theSameWiresInAnotherOrderAreNotPackedAgain() {
        List<Length> one = List.of(Length.ofMillimetres(3), Length.ofMillimetres(2));
        List<Length> other = List.of(Length.ofMillimetres(2), Length.ofMillimetres(3));
        assertThat(pack(other)).isSameAs(pack(one));
    }

    @Test
    void anotherEffortIsAnotherTask() {
        List<Length> wires = wires(8, 2_000);
        PackedBundle normal = pack(wires);
        PackedBundle thorough = packer.pack(wires, Effort.THOROUGH);
        assertThat(thorough).isNotSameAs(normal);
        assertThat(thorough.tight()).isLessThanOrEqualTo(normal.tight());
    }

    @Test
    void theLeastRecentlyUsedBundleIsForgotten() {
        PackedBundle first = pack(wires(1, 1_000));
        pack(wires(2, 1_000));
        pack(wires(3, 1_000));
        PackedBundle again = pack(wires(1, 1_000));
        assertThat(again).isNotSameAs(first).isEqualTo(first);
    }
}
