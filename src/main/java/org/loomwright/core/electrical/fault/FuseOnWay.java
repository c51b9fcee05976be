package org.loomwright.core.electrical.fault;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.FuseRating;
import org.loomwright.core.quantity.Current;

import java.time.Duration;

/**
 * A fuse through which a short draws its current.
 *
 * @param device id of the fuse or the fuse box
 * @param from one of its points
 * @param to another of its points
 * @param rating what is fitted there, or null where nobody said
 * @param through what flows through it
 * @param within in which time it has opened, or null where it is not known to open
 */
public record FuseOnWay(
        String device,
        String from,
        String to,
        @Nullable FuseRating rating,
        Current through,
        @Nullable Duration within) {

    /** @return device and points, for example {@code FUSE-BOX A1 to A2} */
    public String words() {
        return device + " " + from + " to " + to;
    }
}
