package org.loomwright.core.geometry.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LowerBoundTest {

    @Test
    void oneCircleIsBoundedByItself() {
        assertEquals(2.5, LowerBound.of(new double[] {2.5}));
    }

    @Test
    void aThirdCircleThatFitsTheGapAddsNothing() {
        assertEquals(5, LowerBound.of(new double[] {3, 2, 1}), 1e-15);
    }

    @Test
    void threeTouchingCirclesAreBoundedExactly() {
        assertEquals(9.001397746050, LowerBound.of(new double[] {5, 4, 3}), 1e-11);
    }

    @Test
    void fourToNineEqualCirclesAreBoundedExactly() {
        for (int n : new int[] {4, 5, 6, 8, 9}) {
            int parts = n <= 6 ? n : n - 1;
            assertEquals(
                    1 + 1 / Math.sin(Math.PI / parts),
                    LowerBound.of(PackingReferenceTest.equal(n)),
                    1e-12);
        }
        assertEquals(3, LowerBound.of(PackingReferenceTest.equal(7)), 1e-12);
    }

    @Test
    void manyEqualCirclesAreBoundedBeyondTheirArea() {
        assertTrue(LowerBound.of(PackingReferenceTest.equal(1000)) > 1.04 * Math.sqrt(1000));
    }

    @Test
    void oneMoreCircleNeverLowersTheBound() {
        double[] radii = {7, 6.5, 4, 4, 3, 2.2, 2.2, 2.2, 1.5, 1, 1, 1};
        double before = 0;
        for (int n = 1; n <= radii.length; n++) {
            double bound = LowerBound.of(java.util.Arrays.copyOf(radii, n));
            assertTrue(bound >= before);
            before = bound;
        }
    }
}
