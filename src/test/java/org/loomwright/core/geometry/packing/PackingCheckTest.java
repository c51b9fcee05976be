package org.loomwright.core.geometry.packing;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.loomwright.core.geometry.Point;

import java.util.List;

class PackingCheckTest {

    private static final double[] TWO = {1, 1};

    @Test
    void touchingCirclesHold() {
        assertDoesNotThrow(() -> PackingCheck.holds(TWO, packed(2, 1)));
    }

    @Test
    void anOverlapOfTwoNanometresIsFound() {
        assertThrows(AssertionError.class, () -> PackingCheck.holds(TWO, packed(2, 1 - 1e-6)));
    }

    @Test
    void anEscapeOfTwoNanometresIsFound() {
        assertThrows(AssertionError.class, () -> PackingCheck.holds(TWO, packed(2 - 2e-6, 1)));
    }

    @Test
    void aMissingCentreIsFound() {
        assertThrows(
                AssertionError.class,
                () -> PackingCheck.holds(new double[] {1, 1, 1}, packed(2, 1)));
    }

    private static PackedCircles packed(double container, double abscissa) {
        List<Point> centres = List.of(new Point(-abscissa, 0), new Point(abscissa, 0));
        return new PackedCircles(container, centres, 1, Certainty.BEST_FOUND);
    }
}
