package org.loomwright.core.electrical.structure;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;

/**
 * Tells what in a loom is new from what was recorded, by comparing the two.
 *
 * @param recorded the loom as it was recorded; the loom itself where nothing was added
 */
public record Newcomers(Loom recorded) {

    /**
     * @param wire a wire of the loom as it is to be
     * @return whether it was not there, or ran between other points; a wire renewed in its place is not new
     */
    public boolean isNew(Wire wire) {
        Wire before = recorded.wires().get(wire.id());
        return before == null
                || !before.a().isOnSamePointAs(wire.a())
                || !before.b().isOnSamePointAs(wire.b());
    }

    /**
     * @param device a device of the loom as it is to be
     * @return whether it was not there, or was another thing
     */
    public boolean isNew(Device device) {
        Device before = recorded.devices().get(device.id());
        return before == null
                || before.kind() != device.kind()
                || !before.name().equals(device.name());
    }

    boolean changesEarth(Loom loom) {
        return recorded.document().vehicle().earth() != loom.document().vehicle().earth();
    }

    boolean changesSystem(Loom loom) {
        return !recorded.document().vehicle().system().equals(loom.document().vehicle().system());
    }
}
