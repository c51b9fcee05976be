package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

import java.util.List;

/**
 * A device to add.
 *
 * @param key what the recipe calls it
 * @param id its id in the loom, with a number added where it is taken
 * @param name what a person calls it; may name answers in braces, and {@code {fuse}} for the marking of its fuse
 * @param kind what it is
 * @param serves code of its service, or null
 * @param load what it draws, or null
 * @param rating what its contacts carry or its scale shows, or null
 * @param needsEarth {@code positive}, {@code negative} or the id of a question that says so, or null
 * @param points its points
 * @param fuses the fuses fitted in it
 * @param when under which answers it is wanted
 */
public record DevicePart(
        String key,
        String id,
        String name,
        DeviceKind kind,
        @Nullable String serves,
        @Nullable Load load,
        @Nullable Load rating,
        @Nullable String needsEarth,
        List<PointPart> points,
        List<FusePart> fuses,
        When when) {

    /**
     * A point of a new device.
     *
     * @param name its name
     * @param at the spot where it leaves the loom
     * @param tail bare wire from there to the terminal
     * @param takes how many wire ends find room, or null
     * @param terminal code of the terminal, or null for the usual one of its kind of device
     * @param when under which answers the device has it
     */
    public record PointPart(
            String name,
            String at,
            Length tail,
            @Nullable Integer takes,
            @Nullable String terminal,
            When when) {}

    /**
     * A fuse in a new device, as large as what it feeds demands.
     *
     * @param from the point on the side of the source
     * @param to the point on the side of the load
     * @param feeds keys of the devices whose current goes through it
     * @param least the smallest size that is fitted
     */
    public record FusePart(String from, String to, List<String> feeds, Current least) {

        public FusePart {
            feeds = List.copyOf(feeds);
        }
    }

    public DevicePart {
        points = List.copyOf(points);
        fuses = List.copyOf(fuses);
    }
}
