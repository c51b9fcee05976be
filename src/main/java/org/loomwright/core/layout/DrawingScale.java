package org.loomwright.core.layout;

import org.loomwright.core.quantity.Length;

import java.math.RoundingMode;
import java.util.List;

/**
 * How much smaller than the thing a drawing is: one to so much.
 *
 * @param tenths ten times the "to so much", at least 1; 125 means 1 : 12.5
 */
public record DrawingScale(int tenths) {

    /** As large as the thing. */
    public static final DrawingScale FULL_SIZE = new DrawingScale(10);

    /** Scales that a rule or a head can work with, the largest drawing first. Own choice. */
    static final List<DrawingScale> USUAL =
            List.of(
                            10, 15, 20, 25, 30, 40, 50, 60, 70, 75, 80, 90, 100, 110, 120, 125, 130,
                            140, 150, 160, 175, 180, 200, 225, 250, 275, 300, 350, 400, 450, 500,
                            600, 700, 750, 800, 900, 1000, 1250, 1500, 2000, 2500, 3000, 4000, 5000)
                    .stream()
                    .map(DrawingScale::new)
                    .toList();

    public DrawingScale {
        if (tenths < 1) {
            throw new IllegalArgumentException("a scale is positive, was " + tenths + " tenths");
        }
    }

    /**
     * @param real a length on the loom
     * @return the length on the sheet, to the nearest micrometre
     */
    public Length onSheet(Length real) {
        return Length.roundedFromMillimetres(
                onSheetMm(real.toDoubleMillimetres()), RoundingMode.HALF_UP);
    }

    double onSheetMm(double realMm) {
        return realMm * 10 / tenths;
    }

    /** @return for example {@code 1 : 12.5} */
    @Override
    public String toString() {
        return "1 : " + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }
}
