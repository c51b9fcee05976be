package org.loomwright.core.loom;

import java.util.Locale;

/** What a device is, in the trade's words. */
public enum DeviceKind {
    BATTERY,
    DYNAMO,
    ALTERNATOR,
    STARTER,
    CONTROL_BOX,
    AMMETER,
    FUSE_BOX,
    FUSE,
    SWITCH,
    RELAY,
    FLASHER,
    SENDER,
    GAUGE,
    LAMP,
    MOTOR,
    HORN,
    COIL,
    DISTRIBUTOR,
    SOCKET,
    HEATER,
    RADIO,
    JOINT,
    EARTH_POINT,
    CONNECTOR;

    /** @return the kind as a reader sees it, for example {@code earth point} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
