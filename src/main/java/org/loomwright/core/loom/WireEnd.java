package org.loomwright.core.loom;

/**
 * One end of a wire.
 *
 * @param device id of the device
 * @param point name of the device's point; several wires may share it
 * @param terminal code of the terminal in the catalogue
 */
public record WireEnd(String device, String point, String terminal) {

    /** @return device and point in one word, as used in findings: {@code device/point} */
    public String place() {
        return device + "/" + point;
    }

    /** @return whether the other end is on the same point */
    public boolean isOnSamePointAs(WireEnd other) {
        return device.equals(other.device) && point.equals(other.point);
    }
}
