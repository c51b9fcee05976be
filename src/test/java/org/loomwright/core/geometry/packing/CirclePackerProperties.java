package org.loomwright.core.geometry.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.core.geometry.Point;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

class CirclePackerProperties {

    private static final int CASES = 60;

    @Test
    void everyPackingHoldsAndStaysBetweenItsBounds() {
        Random random = new Random(41);
        for (int k = 0; k < CASES; k++) {
            double[] radii = radii(1 + random.nextInt(40), random);
            PackedCircles packed = CirclePacker.pack(radii, Effort.NORMAL);
            PackingCheck.holds(radii, packed);
            assertTrue(packed.lowerBoundMm() <= packed.radiusMm());
        }
    }

    @Test
    void theOrderOfTheRadiiDoesNotMatter() {
        Random random = new Random(42);
        for (int k = 0; k < CASES / 3; k++) {
            List<Double> radii = new ArrayList<>();
            for (double radius : radii(4 + random.nextInt(30), random)) {
                radii.add(radius);
            }
            PackedCircles packed = CirclePacker.pack(radii, Effort.NORMAL);
            List<Double> shuffled = new ArrayList<>(radii);
            Collections.shuffle(shuffled, random);
            PackedCircles again = CirclePacker.pack(shuffled, Effort.NORMAL);
            assertEquals(packed.radiusMm(), again.radiusMm());
            assertEquals(circles(radii, packed), circles(shuffled, again));
        }
    }

    @Test
    void theSameRadiiGiveTheSameBytes() {
        double[] radii = radii(25, new Random(43));
        assertEquals(
                CirclePacker.pack(radii, Effort.NORMAL), CirclePacker.pack(radii, Effort.NORMAL));
    }

    @Test
    void anotherUnitGivesTheSamePacking() {
        Random random = new Random(44);
        for (int k = 0; k < CASES / 3; k++) {
            double[] millimetres = radii(2 + random.nextInt(30), random);
            double[] inches = millimetres.clone();
            for (int i = 0; i < inches.length; i++) {
                inches[i] /= 25.4;
            }
            double expected = CirclePacker.pack(millimetres, Effort.NORMAL).radiusMm();
            assertEquals(
                    expected,
                    CirclePacker.pack(inches, Effort.NORMAL).radiusMm() * 25.4,
                    1e-9 * expected);
        }
    }

    @Test
    void moreEffortIsNeverLooser() {
        Random random = new Random(45);
        for (int k = 0; k < CASES / 10; k++) {
            double[] radii = radii(4 + random.nextInt(20), random);
            double normal = CirclePacker.pack(radii, Effort.NORMAL).radiusMm();
            assertTrue(CirclePacker.pack(radii, Effort.THOROUGH).radiusMm() <= normal);
        }
    }

    /** Every other case has few sizes, as looms have. */
    private static double[] radii(int count, Random random) {
        double[] sizes = {0.65, 0.75, 0.9, 1.0, 1.35, 1.85, 2.6, 3.5};
        boolean fewSizes = random.nextBoolean();
        double[] radii = new double[count];
        for (int i = 0; i < count; i++) {
            radii[i] =
                    fewSizes ? sizes[random.nextInt(sizes.length)] : 0.5 + 3 * random.nextDouble();
        }
        return radii;
    }

    private static List<String> circles(List<Double> radii, PackedCircles packed) {
        List<String> circles = new ArrayList<>();
        for (int i = 0; i < radii.size(); i++) {
            Point centre = packed.centres().get(i);
            circles.add(radii.get(i) + " at " + centre);
        }
        Collections.sort(circles);
        return circles;
    }
}
