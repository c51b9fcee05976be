package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.loom.DeviceKind;

import java.util.List;

/**
 * A feed to find in the loom.
 *
 * @param key what the recipe calls it
 * @param text what it is for, in words
 * @param feeds keys of the devices whose current it gives
 * @param towards the spot that it should be near to
 * @param options what will do, the best first
 * @param fuse the device part that is its own fuse, standing at the feed itself, or null
 * @param when under which answers it is wanted
 */
public record FeedPart(
        String key,
        String text,
        List<String> feeds,
        String towards,
        List<Option> options,
        @Nullable String fuse,
        When when) {

    /**
     * A sort of feed that will do.
     *
     * @param supply what the feed hangs on
     * @param ownFuse whether the kit's own fuse goes in
     * @param renew whether a wire of the loom that would carry too much may be renewed one or more sizes larger
     * @param on kinds of device whose points will do; empty for those where wires usually branch
     * @param through services whose switches may switch it off besides, for example that of the panel lamps
     * @param when under which answers
     */
    public record Option(
            Supply supply,
            boolean ownFuse,
            boolean renew,
            List<DeviceKind> on,
            List<String> through,
            When when) {

        public Option {
            on = List.copyOf(on);
            through = List.copyOf(through);
        }
    }

    public FeedPart {
        feeds = List.copyOf(feeds);
        options = List.copyOf(options);
    }
}
