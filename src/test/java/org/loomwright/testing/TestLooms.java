package org.loomwright.testing;

import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;

import java.util.Objects;

/** Small looms drawn by hand. All of them are invented. */
public final class TestLooms {

    private TestLooms() {}

    /**
     * A front loom, 1600 mm to the lamps' breakout, with a short leg to the control box.
     *
     * <pre>
     *   N1 ---S1 600--- N2 ---S2 1000--- N3 ---S4 450--- N5   lamp L1 at N5
     *   switch, fuse    |                 \----S5 550--- N6   lamp L2 at N6
     *                   \--S3 300-- N4   control box C1 at N4
     * </pre>
     *
     * Grommet O1 stands at 500 mm on S1, clip-like O2 and O3 at 250 mm and 800 mm on S2. S2 was measured twice and bends by 90
     * degrees. Check C1 runs from N1 to N6 (2150 mm).
     *
     * @return the sketch, to be changed further
     */
    public static LoomSketch frontSketch() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 600)
                .segment("S2", "N2", "N3", 1000)
                .segment("S3", "N2", "N4", 300)
                .segment("S4", "N3", "N5", 450)
                .segment("S5", "N3", "N6", 550)
                .readings("S2", 998, 1002)
                .bends("S2", 90)
                .opening("S1", "O1", 500)
                .opening("S2", "O2", 250)
                .opening("S2", "O3", 800)
                .device("F1", DeviceKind.FUSE_BOX, "N1", "N1")
                .device("K1", DeviceKind.SWITCH, "N1", "N1")
                .device("C1", DeviceKind.CONTROL_BOX, "N4", "N4")
                .device("L1", DeviceKind.LAMP, "N5", "N5")
                .device("L2", DeviceKind.LAMP, "N6", "N6")
                .wire("W1", "N", "C1/1", "F1/1")
                .wire("W2", "U", "F1/2", "K1/1")
                .wire("W3", "UR", "K1/2", "L1/1")
                .wire("W4", "UR", "K1/2", "L2/1")
                .wire("W5", "B", "L1/2", "L2/2")
                .check("C1", "N1", "N6", 2150);
    }

    /** @return the loom of {@link #frontSketch} */
    public static Loom front() {
        return frontSketch().loom();
    }

    /**
     * The smallest loom that has a wire: one segment of 1000 mm between a battery and a starter.
     *
     * @return the loom
     */
    public static Loom oneSegment() {
        return new LoomSketch("N1")
                .segment("S1", "N1", "N2", 1000)
                .device("B1", DeviceKind.BATTERY, "N1")
                .device("M1", DeviceKind.STARTER, "N2")
                .wire("W1", "B", "B1/1", "M1/1")
                .loom();
    }

    /**
     * @return the segment with that id
     * @throws NullPointerException if the loom has none
     */
    public static Segment segment(Loom loom, String id) {
        return Objects.requireNonNull(loom.segments().get(id), "no segment " + id);
    }

    /**
     * @return the wire with that id
     * @throws NullPointerException if the loom has none
     */
    public static Wire wire(Loom loom, String id) {
        return Objects.requireNonNull(loom.wires().get(id), "no wire " + id);
    }
}
