package org.loomwright.core.electrical.tracing;

/** Where in its circuit a wire stands. */
public enum Role {
    /** Between a source and a load. */
    LIVE,
    /** Behind a load; a switch or a sender joins it to the body. */
    EARTH_SIDE,
    /** Joined to the body by wires and earth screws alone. */
    RETURN,
    /** Neither a source nor the body can be reached from it. */
    LOOSE
}
