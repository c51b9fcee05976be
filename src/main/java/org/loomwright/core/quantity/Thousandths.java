package org.loomwright.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Turns the outcome of a calculation into whole thousandths: the nearest of its shortest decimal form, halves away from zero. */
final class Thousandths {

    private static final int DECIMALS = 3;
    private static final double PER_UNIT = 1e3;

    /** Up to here the product with a thousand is off by less than 1e-6, so that outside of that distance from a half nothing is in doubt. */
    private static final double LARGEST = 1e9;

    private static final double BEFORE_HALF = 0.5 - 1e-6;

    private Thousandths() {}

    /**
     * @throws NumberFormatException if not finite
     */
    static long rounded(double units) {
        double thousandths = units * PER_UNIT;
        double nearest = Math.rint(thousandths);
        boolean isPlain =
                Math.abs(thousandths) < LARGEST && Math.abs(thousandths - nearest) < BEFORE_HALF;
        return isPlain ? (long) nearest : roundedAsDecimal(units);
    }

    private static long roundedAsDecimal(double units) {
        return BigDecimal.valueOf(units)
                .movePointRight(DECIMALS)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
