package org.loomwright.core.colour.code;

import java.util.Locale;

/** Where in its circuit a wire stands, as far as its colour depends on it. Own terms for what the published list says in sentences. */
public enum Leg {
    /** From the supply, or from its fuse, before any switch of its own. */
    FEED,
    /** Such a feed that ends at a switch. */
    SWITCH_FEED,
    /** Such a feed that ends at a relay. */
    RELAY_FEED,
    /** A wire that ends at a fuse. */
    FUSE_FEED,
    /** Between ammeter and control box or generator. */
    AFTER_AMMETER,
    /** Behind a switch of its own. */
    AFTER_SWITCH,
    /** Behind the main-beam contact of the dip switch. */
    MAIN_BEAM,
    /** Behind the dipped-beam contact of the dip switch. */
    DIPPED_BEAM,
    /** Behind the flasher unit. */
    AFTER_FLASHER,
    /** Behind a relay's contact. */
    AFTER_RELAY,
    /** Behind a fuse that only this circuit has. */
    OWN_FUSE,
    /** Between the generator and its cut-out or warning lamp. */
    GENERATOR,
    /** Between a generator's field and its regulator. */
    FIELD,
    /** Between a gauge or a warning lamp and its sender. */
    SENDER,
    /** Between a consumer and the switch that joins it to the body. */
    EARTH_SWITCHED,
    /** To the body. */
    EARTH,
    /** Anything that tracing cannot tell. */
    OTHER;

    /** @return the constant as a reader sees it, for example {@code after switch} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
