package org.loomwright.core.loom;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.quantity.Current;

import java.util.List;

/**
 * A thing on the vehicle that wires connect to.
 *
 * @param id unique among the devices of the loom
 * @param name what a person calls it
 * @param kind what it is
 * @param load current that it draws at the system's nominal voltage, or null where it draws none or nobody knows
 * @param particulars what else is known about it
 * @param points its connecting points
 */
public record Device(
        String id,
        String name,
        DeviceKind kind,
        @Nullable Current load,
        Particulars particulars,
        List<Point> points) {

    public Device {
        points = List.copyOf(points);
    }

    /** A device about which nothing else is known. */
    public Device(
            String id, String name, DeviceKind kind, @Nullable Current load, List<Point> points) {
        this(id, name, kind, load, Particulars.NONE, points);
    }
}
