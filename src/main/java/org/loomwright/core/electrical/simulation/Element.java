package org.loomwright.core.electrical.simulation;

/** What stands between two points of a device. */
public enum Element {
    /** A battery. */
    SOURCE,
    /** A dynamo or an alternator with its regulator: a source while the engine turns it fast enough. */
    GENERATOR,
    /** The contact of a control box that closes while the generator gives current. */
    CUT_OUT,
    /** Always joined: a winding, a meter, a sender, a contact breaker. */
    LINK,
    /** Joined as long as it is whole. */
    FUSE,
    /** Joined while the scenario says so. */
    CONTACT,
    /** A relay's coil: moves the contacts of its device. */
    COIL,
    /** A bimetal that its own current moves: it moves the contacts of its device. */
    SENSE,
    /** Joined while the device has pulled in. */
    MAKE,
    /** Joined while the device has not pulled in. */
    BREAK,
    /** The winding without whose current a generator gives nothing: a dynamo's field, the field of an alternator behind its lamp. */
    FIELD,
    /** Joined while the engine stands: an oil pressure switch. */
    ENGINE_OFF,
    /** A consumer of current. */
    LOAD,
    /** A screw into the body. */
    EARTH,
    /** Known, but of no account for direct current. */
    NONE;

    /** @return whether current may pass without doing work, once it is joined */
    boolean isConductor() {
        return switch (this) {
            case CUT_OUT, LINK, FUSE, CONTACT, SENSE, MAKE, BREAK, ENGINE_OFF, EARTH -> true;
            case SOURCE, GENERATOR, COIL, FIELD, LOAD, NONE -> false;
        };
    }
}
