package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.kit.DevicePart;
import org.loomwright.core.kit.FeedPart;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;

import java.util.List;

/**
 * A feed that was found.
 *
 * @param part what was looked for
 * @param option which of the sorts that will do it is
 * @param at the point of the loom
 * @param line the wires of the loom from the source to it, the nearest to it first
 * @param renew those of them that would carry too much
 * @param fuse what the fuse of the loom before it carries, or null where there is none
 */
record FeedChoice(
        FeedPart part,
        FeedPart.Option option,
        Place at,
        List<Wire> line,
        List<Wire> renew,
        @Nullable Current fuse) {

    /** Where the kit's wires begin: its own fuse, or the point itself. */
    Place outlet(Draft draft) {
        String key = part.fuse();
        if (!option.ownFuse() || key == null) {
            return at;
        }
        Device device = draft.device(key);
        String out = fusePart(draft, key).to();
        return new Place(
                device,
                device.points().stream()
                        .filter(it -> it.name().equals(out))
                        .findFirst()
                        .orElseThrow());
    }

    static DevicePart.FusePart fusePart(Draft draft, String key) {
        return draft.recipe.devices().stream()
                .filter(it -> it.key().equals(key))
                .flatMap(it -> it.fuses().stream())
                .findFirst()
                .orElseThrow();
    }

    /** What the kit's wires hang on. */
    Supply supplyAtOutlet() {
        return option.ownFuse() ? fused(option.supply()) : option.supply();
    }

    static Supply fused(Supply supply) {
        return switch (supply) {
            case BATTERY, BATTERY_FUSED -> Supply.BATTERY_FUSED;
            case IGNITION, IGNITION_FUSED -> Supply.IGNITION_FUSED;
            case SIDE_LAMPS, HEADLAMPS, GENERATOR, NONE -> supply;
        };
    }

    /** The plain colour of what hangs on it. */
    static String letter(Supply supply) {
        return switch (supply) {
            case BATTERY, GENERATOR, NONE -> "N";
            case BATTERY_FUSED -> "P";
            case IGNITION -> "W";
            case IGNITION_FUSED -> "G";
            case SIDE_LAMPS -> "R";
            case HEADLAMPS -> "U";
        };
    }
}
