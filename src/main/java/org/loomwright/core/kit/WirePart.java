package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;

import java.util.List;

/**
 * A wire to add.
 *
 * @param from its place nearer the source
 * @param to its other place
 * @param colour letters of the code, or {@code supply} for the plain colour of what feeds it
 * @param colourProvenance who says so
 * @param carries keys of the devices whose current goes through it, out or back
 * @param bearing a current that it has to bear whatever its loads, or null
 * @param least designation of the smallest size to use, or null
 * @param when under which answers it is wanted
 */
public record WirePart(
        String from,
        String to,
        String colour,
        Provenance colourProvenance,
        List<String> carries,
        @Nullable Load bearing,
        @Nullable String least,
        When when) {

    /** The colour that follows from what feeds the wire. */
    public static final String BY_SUPPLY = "supply";

    /** A place: the earth point nearest to the other end. */
    public static final String EARTH = "earth";

    /** Begins a place or a spot that is a feed. */
    public static final String FEED = "feed:";

    public WirePart {
        carries = List.copyOf(carries);
    }
}
