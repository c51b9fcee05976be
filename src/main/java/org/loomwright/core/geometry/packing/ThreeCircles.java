package org.loomwright.core.geometry.packing;

/**
 * The exact smallest container of up to three circles.
 *
 * <p>Two circles lie side by side, R = a + b. A third, smallest one may fit into the gap beside them; the largest that
 * does touches both and the wall and has radius ab(a + b) / (a^2 + ab + b^2). If it does not fit, all three touch each
 * other and the wall. One circle is its own container, none needs none.
 *
 * <p>Source: R. Descartes, letter to Elisabeth of Bohemia, 1643 (four touching circles); F. Soddy, "The Kiss Precise",
 * 1936.
 */
final class ThreeCircles {

    private ThreeCircles() {}

    /** Container radius for a, b, c sorted largest first. */
    static double containerRadius(double a, double b, double c) {
        if (fitsBeside(b / a, c / a)) {
            return a + b;
        }
        double bendB = a / b;
        double bendC = a / c;
        return a / (2 * Math.sqrt(bendB + bendC + bendB * bendC) - 1 - bendB - bendC);
    }

    private static boolean fitsBeside(double b, double c) {
        return c <= b * (1 + b) / (1 + b + b * b);
    }

    /** Abscissae, then ordinates, of the packed circles round the origin; at most three, sorted largest first. */
    static double[] centres(double[] sorted) {
        if (sorted.length < 2) {
            return new double[2 * sorted.length];
        }
        double a = sorted[0];
        double b = sorted[1];
        if (sorted.length == 2) {
            return new double[] {-b, a, 0, 0};
        }
        double c = sorted[2];
        double wall = containerRadius(a, b, c);
        double[] first = {a - wall, 0};
        double[] second = apex(first, wall - a, wall - b, a + b);
        double along = (c * (a - b) + a * (a + b)) / (a + b);
        double[] third =
                wall > a + b
                        ? apex(first, wall - a, wall - c, a + c)
                        : new double[] {
                            first[0] + along, Math.sqrt((a + c + along) * (a + c - along))
                        };
        return new double[] {first[0], second[0], third[0], first[1], second[1], -third[1]};
    }

    /** The point at the given distances from the origin and from the first point, itself {@code out} from the origin. */
    private static double[] apex(double[] first, double out, double fromOrigin, double fromFirst) {
        double along = (out * out + fromFirst * fromFirst - fromOrigin * fromOrigin) / (2 * out);
        double aside = Math.sqrt(Math.max(0, fromFirst * fromFirst - along * along));
        return new double[] {first[0] + along, aside};
    }
}
