package org.loomwright.core.geometry.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.core.geometry.Point;

import java.util.Arrays;
import java.util.List;

class CirclePackerTest {

    @Test
    void noWiresNeedNoRoom() {
        PackedCircles packed = CirclePacker.pack(List.of(), Effort.NORMAL);
        assertEquals(new PackedCircles(0, List.of(), 0, Certainty.PROVED), packed);
    }

    @Test
    void oneWireIsItsOwnContainer() {
        PackedCircles packed = CirclePacker.pack(List.of(1.3), Effort.NORMAL);
        assertEquals(new PackedCircles(1.3, List.of(Point.ORIGIN), 1.3, Certainty.PROVED), packed);
    }

    @Test
    void twoWiresLieSideBySide() {
        PackedCircles packed = CirclePacker.pack(List.of(1.0, 3.0), Effort.NORMAL);
        assertEquals(4, packed.radiusMm());
        assertEquals(8, packed.diameterMm());
        assertEquals(List.of(new Point(3, 0), new Point(-1, 0)), packed.centres());
    }

    @Test
    void upToThreeWiresAreProved() {
        assertEquals(
                Certainty.PROVED,
                CirclePacker.pack(List.of(3.0, 4.0, 5.0), Effort.NORMAL).certainty());
    }

    @Test
    void sevenEqualWiresAreProvedByTheLowerBound() {
        PackedCircles packed = CirclePacker.pack(PackingReferenceTest.equal(7), Effort.NORMAL);
        assertEquals(Certainty.PROVED, packed.certainty());
        assertEquals(3, packed.radiusMm(), 3e-9);
    }

    @Test
    void aMixOfThirtyIsOnlyTheBestFound() {
        double[] radii = PackingReferenceTest.mix("4x4.2 26x1.5");
        assertEquals(Certainty.BEST_FOUND, CirclePacker.pack(radii, Effort.NORMAL).certainty());
    }

    @Test
    void wiresThatFitBesideAVeryThickOneDoNotWidenTheLoom() {
        double[] radii = new double[40];
        Arrays.fill(radii, 0.5);
        radii[17] = 100;
        radii[23] = 3;
        PackedCircles packed = CirclePacker.pack(radii, Effort.NORMAL);
        PackingCheck.holds(radii, packed);
        assertEquals(103, packed.radiusMm(), 1e-6);
    }

    @Test
    void aRingOfThinWiresRoundAThickOneIsFound() {
        double[] radii = new double[13];
        Arrays.fill(radii, 1);
        radii[0] = 1 / Math.sin(Math.PI / 12) - 1;
        PackedCircles packed = CirclePacker.pack(radii, Effort.NORMAL);
        PackingCheck.holds(radii, packed);
        assertEquals(radii[0] + 2, packed.radiusMm(), 1e-6);
    }

    @Test
    void fourLargeWiresAreProvedEvenBesideManyTinyOnes() {
        double[] radii = {1, 1, 1, 1, 1e-4, 1e-4, 1e-4, 1e-4, 1e-4};
        PackedCircles packed = CirclePacker.pack(radii, Effort.NORMAL);
        PackingCheck.holds(radii, packed);
        assertEquals(Certainty.PROVED, packed.certainty());
    }

    @Test
    void aThousandEqualWiresPackNearlyHexagonally() {
        double[] radii = PackingReferenceTest.equal(1000);
        PackedCircles packed = CirclePacker.pack(radii, Effort.NORMAL);
        PackingCheck.holds(radii, packed);
        assertTrue(packed.radiusMm() <= 1.025 * packed.lowerBoundMm());
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 0, -0.1})
    void aRadiusThatIsNotAPositiveNumberIsRefusedByIndexAndValue(double wrong) {
        double[] radii = {1, 1, wrong};
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> CirclePacker.pack(radii, Effort.NORMAL));
        assertEquals(
                "radius 2 must be finite and above zero, not " + wrong + " mm",
                refusal.getMessage());
    }

    @Test
    void aContainerBelowItsLowerBoundIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new PackedCircles(1, List.of(), 2, Certainty.BEST_FOUND));
    }
}
