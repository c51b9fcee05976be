package org.loomwright.core.loom;

import org.jspecify.annotations.Nullable;

/**
 * One end of a wire.
 *
 * @param device id of the device
 * @param point name of the device's point; several wires may share it
 * @param terminal code of the terminal in the catalogue
 * @param fitted when the terminal is fitted, or null where nobody said
 */
public record WireEnd(String device, String point, String terminal, @Nullable Fitting fitted) {

    /** An end of which nobody said when its terminal is fitted. */
    public WireEnd(String device, String point, String terminal) {
        this(device, point, terminal, null);
    }

    /** @return device and point in one word, as used in findings: {@code device/point} */
    public String place() {
        return device + "/" + point;
    }

    /** @return whether the other end is on the same point */
    public boolean isOnSamePointAs(WireEnd other) {
        return device.equals(other.device) && point.equals(other.point);
    }
}
