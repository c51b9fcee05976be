package org.loomwright.core.electrical.simulation;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Device;

/** An element of one device of one loom. Its names are made once, because nets ask for them again and again. */
public final class Placed {

    private final Device device;
    private final String from;
    private final String to;
    private final Element element;
    private final String id;
    private final String fromNode;
    private final String toNode;

    /**
     * @param device the device
     * @param from point where it begins
     * @param to point where it ends, or {@code body}
     * @param element what it is
     */
    public Placed(Device device, String from, String to, Element element) {
        this.device = device;
        this.from = from;
        this.to = to;
        this.element = element;
        this.id = "device " + device.id() + " " + from + " " + to;
        this.fromNode = node(from);
        this.toNode = to.equals(Behaviour.BODY) ? Behaviour.BODY : node(to);
    }

    private String node(String point) {
        return device.id() + "/" + point;
    }

    /** @return the device */
    public Device device() {
        return device;
    }

    /** @return point where it begins */
    public String from() {
        return from;
    }

    /** @return point where it ends, or {@code body} */
    public String to() {
        return to;
    }

    /** @return what it is */
    public Element element() {
        return element;
    }

    /** @return the id of its branch in the network */
    public String id() {
        return id;
    }

    /** @return the node of the net where it begins */
    public String fromNode() {
        return fromNode;
    }

    /** @return the node of the net where it ends: {@code body}, or {@code device/point} */
    public String toNode() {
        return toNode;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Placed placed
                && element == placed.element
                && id.equals(placed.id)
                && device.equals(placed.device);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return "%s at %s".formatted(element, id);
    }
}
