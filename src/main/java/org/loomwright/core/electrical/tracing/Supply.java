package org.loomwright.core.electrical.tracing;

import java.util.Locale;

/** What a wire is fed from. */
public enum Supply {
    /** The battery, always live, without a fuse. */
    BATTERY,
    /** The battery, always live, through a fuse. */
    BATTERY_FUSED,
    /** The ignition switch, without a fuse behind it. */
    IGNITION,
    /** The ignition switch, through a fuse behind it. */
    IGNITION_FUSED,
    /** The side-lamp position of the lighting switch. */
    SIDE_LAMPS,
    /** The headlamp position of the lighting switch. */
    HEADLAMPS,
    /** The generator alone, before its cut-out. */
    GENERATOR,
    /** Nothing. */
    NONE;

    /** @return the constant as a reader sees it, for example {@code ignition fused} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
