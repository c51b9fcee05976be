package org.loomwright.core.geometry.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.loomwright.core.geometry.Point;
import org.loomwright.core.geometry.Tolerance;

import java.math.BigDecimal;
import java.util.List;

/**
 * Judges a packing from radii, centres and container radius alone, in exact decimal arithmetic.
 *
 * <p>Distances are compared as exact squares, so no rounding of the judge can hide or invent a violation.
 */
final class PackingCheck {

    private static final BigDecimal SLACK = BigDecimal.valueOf(Tolerance.LENGTH_MM);

    private PackingCheck() {}

    static void holds(double[] radiiMm, PackedCircles packed) {
        List<Point> centres = packed.centres();
        assertEquals(radiiMm.length, centres.size(), "number of centres");
        for (int i = 0; i < radiiMm.length; i++) {
            assertTrue(
                    isInside(centres.get(i), radiiMm[i], packed.radiusMm()),
                    "circle " + i + " sticks out");
            for (int j = 0; j < i; j++) {
                assertTrue(
                        areApart(centres.get(i), centres.get(j), radiiMm[i], radiiMm[j]),
                        overlapText(i, j));
            }
        }
    }

    private static String overlapText(int i, int j) {
        return "circles " + i + " and " + j + " overlap";
    }

    private static boolean isInside(Point centre, double radius, double container) {
        BigDecimal room = exact(container).subtract(exact(radius)).add(SLACK);
        return room.signum() >= 0 && squareOf(centre, Point.ORIGIN).compareTo(room.pow(2)) <= 0;
    }

    private static boolean areApart(Point a, Point b, double radiusA, double radiusB) {
        double clear = Math.abs(a.xMm() - b.xMm()) + Math.abs(a.yMm() - b.yMm());
        if (clear > 3 * (radiusA + radiusB)) {
            return true;
        }
        BigDecimal reach = exact(radiusA).add(exact(radiusB)).subtract(SLACK);
        return reach.signum() <= 0 || squareOf(a, b).compareTo(reach.pow(2)) >= 0;
    }

    private static BigDecimal squareOf(Point a, Point b) {
        BigDecimal dx = exact(a.xMm()).subtract(exact(b.xMm()));
        BigDecimal dy = exact(a.yMm()).subtract(exact(b.yMm()));
        return dx.pow(2).add(dy.pow(2));
    }

    private static BigDecimal exact(double value) {
        return new BigDecimal(value);
    }
}
