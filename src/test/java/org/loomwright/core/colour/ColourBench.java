package org.loomwright.core.colour;

import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.exchange.ColourFiles;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.Arrays;
import java.util.List;

/**
 * A bench with battery, ignition switch, lighting switch and a fuse box (A1 to A2 with the battery, A3 to A4 with the ignition), to which
 * circuits are added one by one. Invented.
 */
final class ColourBench {

    static final ColourCode CODE = ColourFiles.load(TestCatalogue.get());

    /** What stands between the feed of a circuit and the leg in question. */
    enum Way {
        SWITCH,
        EARTH_SWITCH,
        SENDER,
        RELAY,
        MAIN,
        DIP
    }

    private final LoomSketch sketch =
            new LoomSketch("N1")
                    .segment("S1", "N1", "N2", 500)
                    .segment("S2", "N2", "N3", 500)
                    .device(device("BATTERY", "battery", DeviceKind.BATTERY, "N1", "LIVE", "EARTH"))
                    .device(device("STUD", "earth", DeviceKind.EARTH_POINT, "N1", "STUD"))
                    .device(
                            device(
                                    "IGN-SWITCH",
                                    "ignition switch",
                                    DeviceKind.SWITCH,
                                    "N1",
                                    "FEED",
                                    "IGN"))
                    .device(
                            device(
                                    "LIGHT-SWITCH",
                                    "lighting switch",
                                    DeviceKind.SWITCH,
                                    "N1",
                                    "FEED",
                                    "SIDE",
                                    "HEAD"))
                    .device(
                            device(
                                    "FUSE-BOX",
                                    "fuse box",
                                    DeviceKind.FUSE_BOX,
                                    "N2",
                                    "A1",
                                    "A2",
                                    "A3",
                                    "A4"))
                    .wire("E1", "B", "BATTERY/EARTH", "STUD/STUD")
                    .wire("F1", "N", "BATTERY/LIVE", "FUSE-BOX/A1")
                    .wire("F2", "NU", "BATTERY/LIVE", "IGN-SWITCH/FEED")
                    .wire("F3", "NU", "BATTERY/LIVE", "LIGHT-SWITCH/FEED")
                    .wire("F4", "W", "IGN-SWITCH/IGN", "FUSE-BOX/A3");

    static Device device(String id, String name, DeviceKind kind, String node, String... points) {
        List<Point> there =
                Arrays.stream(points).map(it -> new Point(it, node, LoomSketch.mm(80))).toList();
        return new Device(id, name, kind, Current.ofMilliamperes(500), there);
    }

    LoomSketch sketch() {
        return sketch;
    }

    /** Adds a consumer {@code X} whose leg in question is wire {@code X-LEG}, of that colour. */
    ColourBench circuit(
            String id, String name, DeviceKind kind, String feed, Way way, String colour) {
        String live = kind == DeviceKind.RELAY ? "COIL" : "FEED";
        switch (way) {
            case SWITCH -> {
                add(id, name, kind, live);
                add(id + "-SWITCH", name + " switch", DeviceKind.SWITCH, "FEED", "OUT");
                feedAndLeg(id, feed, "-SWITCH/FEED", colour, "-SWITCH/OUT", live);
            }
            case MAIN, DIP -> {
                add(id, name, kind, way.name());
                add(id + "-SWITCH", "dip switch", DeviceKind.SWITCH, "FEED", "MAIN", "DIP");
                feedAndLeg(id, feed, "-SWITCH/FEED", colour, "-SWITCH/" + way, way.name());
            }
            case RELAY -> {
                add(id, name, kind, live);
                add(id + "-RELAY", name + " relay", DeviceKind.RELAY, "30", "87", "86", "85");
                feedAndLeg(id, feed, "-RELAY/30", colour, "-RELAY/87", live);
                sketch.wire(id + "-COIL", "G", "FUSE-BOX/A4", id + "-RELAY/86");
            }
            case EARTH_SWITCH -> {
                add(id, name, kind, "FEED", "SWITCH", "PUSH");
                add(id + "-SWITCH", name + " switch", DeviceKind.SWITCH, "SWITCH");
                feedAndLeg(id, feed, "/FEED", colour, "-SWITCH/SWITCH", earthPoint(kind));
            }
            case SENDER -> {
                add(id, name, kind, "FEED", "SWITCH", "SENDER");
                add(id + "-SENDER", name + " sender", DeviceKind.SENDER, "SENDER");
                String point = kind == DeviceKind.GAUGE ? "SENDER" : "SWITCH";
                feedAndLeg(id, feed, "/FEED", colour, "-SENDER/SENDER", point);
            }
        }
        return this;
    }

    private static String earthPoint(DeviceKind kind) {
        return kind == DeviceKind.HORN ? "PUSH" : "SWITCH";
    }

    private void add(String id, String name, DeviceKind kind, String... points) {
        sketch.device(device(id, name, kind, "N3", points));
    }

    private void feedAndLeg(
            String id, String feed, String fed, String colour, String from, String point) {
        sketch.wire(id + "-FEED", feedColour(feed), feed, id + fed);
        sketch.wire(id + "-LEG", colour, id + from, id + "/" + point);
    }

    private static String feedColour(String feed) {
        return switch (feed) {
            case "FUSE-BOX/A2" -> "P";
            case "FUSE-BOX/A4" -> "G";
            case "IGN-SWITCH/IGN" -> "W";
            case "LIGHT-SWITCH/SIDE" -> "R";
            case "LIGHT-SWITCH/HEAD" -> "U";
            default -> throw new IllegalArgumentException("the bench has no feed " + feed);
        };
    }

    TracedLoom traced() {
        return traced(sketch.loom());
    }

    static TracedLoom traced(Loom loom) {
        return TracedLoom.of(
                loom,
                Tracing.of(loom, TestCatalogue.get(), ElectricalFiles.behaviours()),
                TestCatalogue.get());
    }
}
