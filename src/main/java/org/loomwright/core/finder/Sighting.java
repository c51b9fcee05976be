package org.loomwright.core.finder;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Length;

/**
 * What somebody sees of a wire. Everything may be left out, but not all of it.
 *
 * @param colour in letters or words, for example {@code GN}, {@code green or blue with a dark tracer}; empty where it cannot be seen
 * @param size designation of the conductor size, or null
 * @param strands number of strands counted, or null
 * @param outside diameter over the insulation, or null
 * @param place where on the vehicle: a node or a device by id or in words; may be empty
 */
public record Sighting(
        String colour,
        @Nullable String size,
        @Nullable Integer strands,
        @Nullable Length outside,
        String place) {

    /** @return a sighting of a colour alone */
    public static Sighting of(String colour) {
        return new Sighting(colour, null, null, null, "");
    }

    /** @return the same with the place where it was seen */
    public Sighting at(String newPlace) {
        return new Sighting(colour, size, strands, outside, newPlace);
    }

    /** @return the same with the conductor size read */
    public Sighting ofSize(String newSize) {
        return new Sighting(colour, newSize, strands, outside, place);
    }

    boolean saysNothing() {
        return colour.isBlank()
                && size == null
                && strands == null
                && outside == null
                && place.isBlank();
    }
}
