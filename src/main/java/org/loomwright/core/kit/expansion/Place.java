package org.loomwright.core.kit.expansion;

import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.WireEnd;

/** A point of a device that is in the loom or about to be added. */
record Place(Device device, Point point) {

    /** {@code device/point}. */
    String id() {
        return device.id() + "/" + point.name();
    }

    boolean isEndOf(WireEnd end) {
        return end.place().equals(id());
    }
}
