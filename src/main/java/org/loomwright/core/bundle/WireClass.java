package org.loomwright.core.bundle;

import org.loomwright.core.catalogue.WireColour;

import java.util.Comparator;

/**
 * Wires that cannot be told apart in a bundle: one colour, one size.
 *
 * @param colour body and tracer
 * @param size designation of the conductor size
 */
public record WireClass(WireColour colour, String size) implements Comparable<WireClass> {

    private static final Comparator<WireClass> ORDER =
            Comparator.comparing(WireClass::colour).thenComparing(WireClass::size);

    @Override
    public int compareTo(WireClass other) {
        return ORDER.compare(this, other);
    }
}
