package org.loomwright.core.loom;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.quantity.Current;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether devices stand at nodes and wires end on devices, with colours, sizes and terminals of the catalogue. */
final class WiringCheck {

    private final LoomDocument document;
    private final Set<String> nodes;
    private final Catalogue catalogue;
    private final Faults faults;
    private final Map<String, Set<String>> pointsByDevice = new HashMap<>();

    WiringCheck(LoomDocument document, Set<String> nodes, Catalogue catalogue, Faults faults) {
        this.document = document;
        this.nodes = nodes;
        this.catalogue = catalogue;
        this.faults = faults;
    }

    void check() {
        List<Subject> devices =
                LoomChecker.subjects(ThingKind.DEVICE, document.devices(), Device::id, "/devices/");
        faults.checkIds(devices);
        for (int i = 0; i < devices.size(); i++) {
            checkDevice(document.devices().get(i), devices.get(i));
        }
        List<Subject> wires =
                LoomChecker.subjects(ThingKind.WIRE, document.wires(), Wire::id, "/wires/");
        faults.checkIds(wires);
        for (int i = 0; i < wires.size(); i++) {
            checkWire(document.wires().get(i), wires.get(i));
        }
    }

    private void checkDevice(Device device, Subject subject) {
        faults.checkText(subject, "name", device.name());
        Current load = device.load();
        if (load != null) {
            faults.addUnless(
                    load.milliamperes() >= 0 && load.milliamperes() <= LoomLimits.MOST_MILLIAMPERES,
                    "load-not-sane",
                    subject,
                    "The load of device %s is %s; it must be 0 A to %d A.",
                    device.id(),
                    load,
                    LoomLimits.MOST_MILLIAMPERES / 1_000);
        }
        faults.addUnless(
                !device.points().isEmpty(),
                "device-without-point",
                subject,
                "Device %s has no connecting point.",
                device.id());
        faults.checkCount(subject, "points", device.points().size(), LoomLimits.MOST_ROWS);
        Set<String> names = new HashSet<>();
        for (int i = 0; i < device.points().size(); i++) {
            checkPoint(device, i, names, subject);
        }
        pointsByDevice.putIfAbsent(device.id(), names);
    }

    private void checkPoint(Device device, int index, Set<String> names, Subject under) {
        Point point = device.points().get(index);
        Subject subject =
                new Subject(
                        ThingKind.POINT,
                        device.id() + "/" + point.name(),
                        under.pointer() + "/points/" + index);
        faults.checkId(new Subject(ThingKind.POINT, point.name(), subject.pointer()));
        faults.addUnless(
                names.add(point.name()),
                "id-twice",
                subject,
                "Device %s has more than one point %s.",
                device.id(),
                point.name());
        faults.addUnless(
                nodes.contains(point.node()),
                "node-unknown",
                subject,
                "Point %s leaves the loom at node %s, which does not exist.",
                subject.id(),
                point.node());
        faults.checkNotNegative(subject, "tail", point.tail(), LoomLimits.LONGEST_TAIL);
    }

    private void checkWire(Wire wire, Subject subject) {
        faults.checkText(subject, "circuit", wire.circuit());
        faults.addUnless(
                catalogue.hasColour(wire.colour()),
                "colour-unknown",
                subject,
                "Wire %s has colour '%s', which the colour code does not know.",
                wire.id(),
                wire.colour());
        faults.addUnless(
                catalogue.findSize(wire.size()).isPresent(),
                "size-unknown",
                subject,
                "Wire %s has conductor size '%s', which the catalogue does not know.",
                wire.id(),
                wire.size());
        checkEnd(wire, Side.A, subject);
        checkEnd(wire, Side.B, subject);
        faults.addUnless(
                !wire.a().isOnSamePointAs(wire.b()),
                "wire-to-itself",
                subject,
                "Wire %s runs from point %s to itself.",
                wire.id(),
                wire.a().place());
    }

    private void checkEnd(Wire wire, Side side, Subject under) {
        WireEnd end = wire.end(side);
        String pointer = under.pointer() + (side == Side.A ? "/a" : "/b");
        Subject subject = new Subject(ThingKind.WIRE, wire.id(), pointer);
        faults.addUnless(
                catalogue.findTerminal(end.terminal()).isPresent(),
                "terminal-unknown",
                subject,
                "End %s of wire %s has terminal '%s', which the catalogue does not know.",
                side,
                wire.id(),
                end.terminal());
        Set<String> points = pointsByDevice.get(end.device());
        if (points == null) {
            faults.add(
                    "device-unknown",
                    subject,
                    "End %s of wire %s is on device %s, which does not exist."
                            .formatted(side, wire.id(), end.device()));
        } else {
            faults.addUnless(
                    points.contains(end.point()),
                    "point-unknown",
                    subject,
                    "End %s of wire %s is on point %s, but device %s has no such point.",
                    side,
                    wire.id(),
                    end.point(),
                    end.device());
        }
    }
}
