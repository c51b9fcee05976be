package org.loomwright.core.loom;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether wires end on devices, with colours, sizes and terminals of the catalogue. */
final class WiringCheck {

    private final LoomDocument document;
    private final Catalogue catalogue;
    private final Faults faults;
    private final DeviceCheck deviceCheck;
    private final Map<String, Set<String>> pointsByDevice = new HashMap<>();

    WiringCheck(LoomDocument document, Set<String> nodes, Catalogue catalogue, Faults faults) {
        this.document = document;
        this.catalogue = catalogue;
        this.faults = faults;
        this.deviceCheck = new DeviceCheck(nodes, catalogue, faults);
    }

    void check() {
        List<Subject> devices =
                LoomChecker.subjects(ThingKind.DEVICE, document.devices(), Device::id, "/devices/");
        faults.checkIds(devices);
        for (int i = 0; i < devices.size(); i++) {
            Device device = document.devices().get(i);
            Set<String> points = deviceCheck.check(device, devices.get(i));
            pointsByDevice.putIfAbsent(device.id(), points);
        }
        List<Subject> wires =
                LoomChecker.subjects(ThingKind.WIRE, document.wires(), Wire::id, "/wires/");
        faults.checkIds(wires);
        for (int i = 0; i < wires.size(); i++) {
            checkWire(document.wires().get(i), wires.get(i));
        }
    }

    private void checkWire(Wire wire, Subject subject) {
        faults.checkText(subject, "circuit", wire.circuit());
        faults.addUnless(
                catalogue.hasColour(wire.colour()),
                "colour-unknown",
                subject,
                "Wire %s has colour '%s', which neither the colour code nor the loom knows.",
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
