package org.loomwright.core.finding;

import java.util.Locale;

/** The kinds of thing that a finding can be about. */
public enum ThingKind {
    /** The loom as a whole. */
    LOOM,
    /** The vehicle that it belongs to. */
    VEHICLE,
    /** A breakout or an end. */
    NODE,
    /** A run between two nodes. */
    SEGMENT,
    /** A grommet, hole, tube or clip on a segment. */
    OPENING,
    /** Something on the vehicle that wires connect to. */
    DEVICE,
    /** A connecting point of a device. */
    POINT,
    /** One wire. */
    WIRE,
    /** A measurement from one node to another. */
    CHECK,
    /** One change to the stock loom. */
    AMENDMENT,
    /** A request as it was sent. */
    REQUEST,
    /** A stock loom with its amendments. */
    SPECIFICATION,
    /** The settings of a calculation. */
    SETTINGS,
    /** A work order. */
    WORK_ORDER;

    /** @return the kind in words for a person, for example {@code work order} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
