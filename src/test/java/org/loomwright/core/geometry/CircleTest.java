package org.loomwright.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CircleTest {

    private static final Circle UNIT = new Circle(Point.ORIGIN, 1);

    @Test
    void touchingCirclesDoNotOverlap() {
        assertFalse(UNIT.overlaps(new Circle(new Point(3, 0), 2)));
    }

    @Test
    void overlapWithinTheToleranceCountsAsNone() {
        assertFalse(UNIT.overlaps(new Circle(new Point(2 - 0.9e-6, 0), 1)));
        assertTrue(UNIT.overlaps(new Circle(new Point(2 - 1.1e-6, 0), 1)));
    }

    @Test
    void aCircleTouchingTheWallFromInsideIsEnclosed() {
        assertTrue(new Circle(Point.ORIGIN, 3).encloses(new Circle(new Point(0, 2), 1)));
        assertFalse(new Circle(Point.ORIGIN, 3).encloses(new Circle(new Point(0, 2.00001), 1)));
    }

    @Test
    void overlapAndEscapeAreSigned() {
        assertEquals(-1, UNIT.overlapMm(new Circle(new Point(3, 0), 1)), 1e-15);
        assertEquals(-0.5, UNIT.escapeMm(new Circle(Point.ORIGIN, 0.5)), 1e-15);
    }

    @Test
    void aRadiusBelowZeroOrNotFiniteIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Circle(Point.ORIGIN, -1));
        assertThrows(IllegalArgumentException.class, () -> new Circle(Point.ORIGIN, Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Circle(Point.ORIGIN, Double.POSITIVE_INFINITY));
    }

    @Test
    void aPointThatIsNotFiniteIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Point(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new Point(0, Double.NEGATIVE_INFINITY));
    }

    @Test
    void distancesDoNotOverflow() {
        assertEquals(5e200, Point.ORIGIN.distanceToMm(new Point(3e200, 4e200)), 1e186);
    }
}
