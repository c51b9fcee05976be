package org.loomwright.core.electrical.simulation;

import org.loomwright.core.loom.Device;

/**
 * An element of one device of one loom.
 *
 * @param device the device
 * @param from point where it begins
 * @param to point where it ends, or {@code body}
 * @param element what it is
 */
public record Placed(Device device, String from, String to, Element element) {

    /** @return the id of its branch in the network */
    public String id() {
        return "device " + device.id() + " " + from + " " + to;
    }

    /** @return the node of the net where it begins */
    public String fromNode() {
        return node(from);
    }

    /** @return the node of the net where it ends: {@code body}, or {@code device/point} */
    public String toNode() {
        return to.equals(Behaviour.BODY) ? Behaviour.BODY : node(to);
    }

    private String node(String point) {
        return device.id() + "/" + point;
    }
}
