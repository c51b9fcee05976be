package org.loomwright.core.electrical.check.current;

import java.util.Set;

/**
 * Which parts of a loom are new. Everything else is as it was recorded and is told as original.
 *
 * @param wires ids of added wires and of wires that were put in the place of others
 * @param devices ids of added devices
 */
public record Additions(Set<String> wires, Set<String> devices) {

    /** Nothing was added: the loom is the recorded one. */
    public static final Additions NONE = new Additions(Set.of(), Set.of());

    public Additions {
        wires = Set.copyOf(wires);
        devices = Set.copyOf(devices);
    }

    boolean hasWire(String wire) {
        return wires.contains(wire);
    }

    boolean hasDevice(String device) {
        return devices.contains(device);
    }
}
