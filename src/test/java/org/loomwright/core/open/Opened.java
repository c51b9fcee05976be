package org.loomwright.core.open;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.amendment.Amendment.AddDevice;
import org.loomwright.core.amendment.Amendment.AddWire;
import org.loomwright.core.amendment.Amendments;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.Point;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.exchange.ElectricalFiles;
import org.loomwright.exchange.ExpectationFiles;
import org.loomwright.testing.LoomSketch;
import org.loomwright.testing.TestCatalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A small car, what is added to it in a few words, and what is then open. */
final class Opened {

    private static final OpenPoints POINTS =
            new OpenPoints(
                    TestCatalogue.get(),
                    ElectricalFiles.behaviours(),
                    ExpectationFiles.load(TestCatalogue.get()));

    private final LoomSketch sketch;
    private final List<Amendment> amendments = new ArrayList<>();

    private Opened(LoomSketch sketch) {
        this.sketch = sketch;
    }

    /**
     * Battery, ignition switch, fuse box and an earth stud at N1, a leg of 1000 mm to N2.
     *
     * @return nothing added yet
     */
    static Opened car() {
        return of(
                new LoomSketch("N1")
                        .segment("S1", "N1", "N2", 1000)
                        .device(
                                device(
                                        "BATTERY",
                                        "battery",
                                        DeviceKind.BATTERY,
                                        "N1",
                                        "LIVE",
                                        "EARTH"))
                        .device(device("STUD", "stud", DeviceKind.EARTH_POINT, "N1", "STUD"))
                        .device(
                                device(
                                        "IGN",
                                        "ignition switch",
                                        DeviceKind.SWITCH,
                                        "N1",
                                        "FEED",
                                        "IGN"))
                        .device(
                                device(
                                        "BOX",
                                        "fuse box",
                                        DeviceKind.FUSE_BOX,
                                        "N1",
                                        "A1",
                                        "A2",
                                        "A3",
                                        "A4"))
                        .wire("W1", "N", "BATTERY/LIVE", "BOX/A1")
                        .wire("W2", "N", "BATTERY/LIVE", "IGN/FEED")
                        .wire("W3", "W", "IGN/IGN", "BOX/A3")
                        .wire("W4", "B", "BATTERY/EARTH", "STUD/STUD"));
    }

    static Opened of(LoomSketch sketch) {
        return new Opened(sketch);
    }

    static Device device(String id, String name, DeviceKind kind, String node, String... points) {
        return new Device(
                id,
                name,
                kind,
                null,
                Arrays.stream(points)
                        .map(point -> new Point(point, node, LoomSketch.mm(80)))
                        .toList());
    }

    static Device with(Device device, Particulars particulars) {
        return new Device(
                device.id(),
                device.name(),
                device.kind(),
                device.load(),
                particulars,
                device.points());
    }

    static Device taking(Device device, long milliamperes) {
        return new Device(
                device.id(),
                device.name(),
                device.kind(),
                Current.ofMilliamperes(milliamperes),
                device.particulars(),
                device.points());
    }

    static Particulars said(
            @Nullable String serves,
            @Nullable Current rating,
            @Nullable Voltage voltage,
            @Nullable EarthPolarity needsEarth,
            FittedFuse... fuses) {
        return new Particulars(serves, rating, voltage, needsEarth, List.of(fuses));
    }

    Opened add(Device device) {
        return amend(new AddDevice("D-" + device.id(), "", device));
    }

    /** Adds a device at N2. */
    Opened add(String id, String name, DeviceKind kind, String... points) {
        return add(device(id, name, kind, "N2", points));
    }

    Opened wire(String id, String colour, String a, String b) {
        return amend(new AddWire("A-" + id, "", LoomSketch.plainWire(id, colour, a, b)));
    }

    Opened amend(Amendment amendment) {
        amendments.add(amendment);
        return this;
    }

    Loom stock() {
        return sketch.loom();
    }

    OpenReport report() {
        return report(stock(), amendments);
    }

    static OpenReport report(Loom stock, List<Amendment> amendments) {
        return Amendments.apply(stock, amendments, TestCatalogue.get())
                .map(amended -> POINTS.of(stock, amended))
                .orElseThrow(reasons -> new IllegalStateException(reasons.toString()));
    }

    /** What is open about one thing, as codes without {@code open.}, in the order of the report. */
    List<String> open(String id) {
        return report().points().stream()
                .filter(point -> point.subject().id().equals(id))
                .map(point -> point.code().substring("open.".length()))
                .toList();
    }
}
