package org.loomwright.core.bundle;

import org.loomwright.core.geometry.Circle;
import org.loomwright.core.quantity.Length;

import java.util.List;

/**
 * A bundle of wires of given diameters, packed.
 *
 * @param diameters outside diameters in ascending order
 * @param circles where each of them lies, in the same order; the bundle's centre is the origin
 * @param tight diameter of the circle round them, rounded up to the micrometre
 * @param lowerBound no arrangement can be tighter than this, rounded down to the micrometre
 * @param proved whether the tight diameter is known to be the smallest possible
 */
public record PackedBundle(
        List<Length> diameters,
        List<Circle> circles,
        Length tight,
        Length lowerBound,
        boolean proved) {

    public PackedBundle {
        diameters = List.copyOf(diameters);
        circles = List.copyOf(circles);
    }
}
