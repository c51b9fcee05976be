package org.loomwright.core.loom;

import org.loomwright.core.quantity.Length;
import org.loomwright.core.quantity.Voltage;

/**
 * What is taken as sane for a vehicle's loom. Beyond these a reading or a document is a slip, not a loom. Own choice, common
 * practice, no source: the longest coach has less than 15 m of loom between two breakouts.
 */
public final class LoomLimits {

    /** Longest segment. */
    public static final Length LONGEST_SEGMENT = Length.ofMillimetres(15_000);

    /** Longest tail. */
    public static final Length LONGEST_TAIL = Length.ofMillimetres(5_000);

    /** Longest end-to-end measurement. */
    public static final Length LONGEST_CHECK = Length.ofMillimetres(60_000);

    /** Widest opening. */
    public static final Length WIDEST_OPENING = Length.ofMillimetres(250);

    /** Most nodes, and so most segments. */
    public static final int MOST_NODES = 5_000;

    /** Most devices. */
    public static final int MOST_DEVICES = 5_000;

    /** Most wires. */
    public static final int MOST_WIRES = 20_000;

    /** Most rows of any list inside a part: openings, points, readings, tracers, remarks. */
    public static final int MOST_ROWS = 200;

    /** Most colours that a loom declares as its own. */
    public static final int MOST_OWN_COLOURS = 30;

    /** Longest id. */
    public static final int LONGEST_ID = 40;

    /** Longest name or sentence. */
    public static final int LONGEST_TEXT = 300;

    /** Largest current of a device: a starter's. */
    public static final int MOST_MILLIAMPERES = 1_000_000;

    /** Largest figure on a fuse. */
    public static final int LARGEST_FUSE_MILLIAMPERES = 500_000;

    /** Most wire ends that find room on one point: a bus bar's. */
    public static final int MOST_ENDS_ON_A_POINT = 50;

    /** Lowest nominal voltage of a vehicle or a device. */
    public static final Voltage LOWEST_VOLTAGE = Voltage.ofMillivolts(4_000);

    /** Highest nominal voltage of a vehicle or a device. */
    public static final Voltage HIGHEST_VOLTAGE = Voltage.ofMillivolts(48_000);

    private LoomLimits() {}

    static boolean isSane(Voltage voltage) {
        return voltage.compareTo(LOWEST_VOLTAGE) >= 0 && voltage.compareTo(HIGHEST_VOLTAGE) <= 0;
    }
}
