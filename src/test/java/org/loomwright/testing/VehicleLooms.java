package org.loomwright.testing;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Looms from a seed that are wired as a vehicle is: battery, dynamo and control box, ignition and lighting switch, fuse box, then circuit
 * after circuit of feed, switch, joint, lamps and their earths, every fourth with a relay and a fuse of its own. The same seed and
 * numbers give the same loom for ever.
 */
public final class VehicleLooms {

    private static final List<String> SERVICES =
            List.of(
                    "fog-lamps",
                    "heater",
                    "wiper",
                    "reversing-lamps",
                    "stop-lamps",
                    "panel-lamps",
                    "radio",
                    "horns",
                    "fan",
                    "heated-rear-window");

    private static final List<String> FEEDS =
            List.of("FUSES/A2", "FUSES/A4", "LIGHT/SIDE", "LIGHT/HEAD", "IGN/IGN");

    private static final int EARTHS = 6;

    private final Random random;
    private final int wireCount;
    private final int nodeCount;
    private final LoomSketch sketch = new LoomSketch("N0");
    private final List<String> joints = new ArrayList<>();
    private int wires;
    private int circuits;

    private VehicleLooms(long seed, int wireCount) {
        this.random = new Random(seed);
        this.wireCount = wireCount;
        this.nodeCount = Math.max(8, wireCount / 2);
    }

    /**
     * @param seed decides everything
     * @param wireCount how many wires, at least 20
     * @return a loom whose net is nearly a tree
     */
    public static Loom of(long seed, int wireCount) {
        return of(seed, wireCount, 0);
    }

    /**
     * @param seed decides everything
     * @param wireCount how many wires besides those that close loops
     * @param loops how many wires join two joints that current can reach by other ways
     * @return the loom
     */
    public static Loom of(long seed, int wireCount, int loops) {
        VehicleLooms looms = new VehicleLooms(seed, wireCount);
        looms.segments();
        looms.supply();
        while (looms.wires < wireCount) {
            looms.circuit();
        }
        for (int i = 0; i < loops; i++) {
            looms.loop(i);
        }
        return looms.sketch.loom();
    }

    private void segments() {
        for (int i = 1; i < nodeCount; i++) {
            int from = random.nextInt(Math.max(0, i - 6), i);
            sketch.segment("S" + i, "N" + from, "N" + i, 100 + random.nextInt(900));
        }
    }

    private void supply() {
        device("BATTERY", DeviceKind.BATTERY, null, null, "LIVE", "EARTH");
        device("SOLENOID", DeviceKind.RELAY, null, 12_000, "BATT", "COIL");
        device("AMMETER", DeviceKind.AMMETER, null, null, "BATT", "LOAD");
        device("BOX", DeviceKind.CONTROL_BOX, null, null, "A", "A1", "D", "F", "E");
        device("DYNAMO", DeviceKind.DYNAMO, null, null, "D", "F");
        device("IGN", DeviceKind.SWITCH, "ignition", null, "FEED", "IGN");
        device("LIGHT", DeviceKind.SWITCH, "lighting", null, "FEED", "SIDE", "HEAD");
        device("FUSES", DeviceKind.FUSE_BOX, null, null, "A1", "A2", "A3", "A4");
        device("CHARGE-LAMP", DeviceKind.LAMP, "ignition-warning", 180, "IGN", "DYNAMO");
        for (int i = 0; i < EARTHS; i++) {
            device("EARTH" + i, DeviceKind.EARTH_POINT, null, null, "STUD");
        }
        wire("37/0.90", "N", "BATTERY/LIVE", "SOLENOID/BATT");
        wire("37/0.90", "B", "BATTERY/EARTH", "EARTH0/STUD");
        wire("84/0.30", "N", "SOLENOID/BATT", "AMMETER/BATT");
        wire("84/0.30", "NW", "AMMETER/LOAD", "BOX/A");
        wire("65/0.30", "NY", "BOX/D", "DYNAMO/D");
        wire("14/0.30", "NG", "BOX/F", "DYNAMO/F");
        wire("14/0.30", "B", "BOX/E", "EARTH1/STUD");
        wire("44/0.30", "NU", "BOX/A1", "LIGHT/FEED");
        wire("44/0.30", "NU", "BOX/A1", "IGN/FEED");
        wire("28/0.30", "N", "BOX/A1", "FUSES/A1");
        wire("44/0.30", "W", "IGN/IGN", "FUSES/A3");
        wire("14/0.30", "NY", "BOX/D", "CHARGE-LAMP/DYNAMO");
        wire("14/0.30", "W", "IGN/IGN", "CHARGE-LAMP/IGN");
    }

    /** One more circuit, as far as there are wires left for it. */
    private void circuit() {
        int number = circuits++;
        String service = SERVICES.get(number % SERVICES.size());
        String feed = FEEDS.get(random.nextInt(FEEDS.size()));
        device("SWITCH" + number, DeviceKind.SWITCH, service, null, "FEED", "OUT");
        device("JOINT" + number, DeviceKind.JOINT, null, null, "JOINT");
        joints.add("JOINT" + number + "/JOINT");
        wire("14/0.30", "G", feed, "SWITCH" + number + "/FEED");
        if (number % 4 == 3) {
            relay(number);
        } else {
            wire("14/0.30", "GN", "SWITCH" + number + "/OUT", "JOINT" + number + "/JOINT");
        }
        int lamps = 1 + random.nextInt(4);
        for (int lamp = 0; lamp < lamps; lamp++) {
            lamp(number, "LAMP" + number + "-" + lamp, service);
        }
    }

    private void relay(int number) {
        String relay = "RELAY" + number;
        device("FUSE" + number, DeviceKind.FUSE, null, null, "IN", "OUT");
        device(relay, DeviceKind.RELAY, null, 150, "30", "87", "86", "85");
        wire("44/0.30", "N", "SOLENOID/BATT", "FUSE" + number + "/IN");
        wire("44/0.30", "P", "FUSE" + number + "/OUT", relay + "/30");
        wire("14/0.30", "GN", "SWITCH" + number + "/OUT", relay + "/86");
        wire("14/0.30", "B", relay + "/85", earth());
        wire("28/0.30", "GN", relay + "/87", "JOINT" + number + "/JOINT");
    }

    private void lamp(int number, String lamp, String service) {
        device(lamp, DeviceKind.LAMP, service, 180 + random.nextInt(3_000), "FEED", "EARTH");
        wire("14/0.30", "GN", "JOINT" + number + "/JOINT", lamp + "/FEED");
        wire("14/0.30", "B", lamp + "/EARTH", earth());
    }

    private void loop(int number) {
        String one = joints.get(random.nextInt(joints.size()));
        String other = joints.get(random.nextInt(joints.size()));
        if (!one.equals(other)) {
            sketch.wire(sized("L" + number, "14/0.30", "G", one, other));
        }
    }

    private String earth() {
        return "EARTH" + random.nextInt(EARTHS) + "/STUD";
    }

    private void device(
            String id,
            DeviceKind kind,
            @Nullable String serves,
            @Nullable Integer milliamperes,
            String... points) {
        String node = "N" + random.nextInt(nodeCount);
        List<Point> at =
                Arrays.stream(points)
                        .map(name -> new Point(name, node, Length.ofMillimetres(80)))
                        .toList();
        Current load = milliamperes == null ? null : Current.ofMilliamperes(milliamperes);
        Particulars particulars = new Particulars(serves, null, null, null, List.of());
        sketch.device(new Device(id, kind.words() + " " + id, kind, load, particulars, at));
    }

    private void wire(String size, String colour, String from, String to) {
        if (wires < wireCount) {
            wires++;
            sketch.wire(sized("W%05d".formatted(wires), size, colour, from, to));
        }
    }

    private static Wire sized(String id, String size, String colour, String from, String to) {
        Wire plain = LoomSketch.plainWire(id, colour, from, to);
        return new Wire(
                id, plain.circuit(), plain.colour(), size, plain.a(), plain.b(), plain.condition());
    }
}
