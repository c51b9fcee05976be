package org.loomwright.core.electrical.simulation;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Power;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What the devices of a loom leave open for a simulation, whatever the scenario. */
final class DeviceChecks {

    /** Own choice: more than any consumer of a vehicle but its starter takes. */
    private static final Power MOST = Power.ofWatts(new BigDecimal(2_000));

    private DeviceChecks() {}

    static List<Finding> of(Wiring wiring, Behaviours behaviours, Circuit circuit) {
        List<Finding> findings = new ArrayList<>();
        for (Device device : wiring.devices().values()) {
            if (!behaviours.knows(device)) {
                findings.add(
                        Finding.warning(
                                "electrical.points-unknown",
                                Subject.of(ThingKind.DEVICE, device.id()),
                                "What %s %s does at %s is not known; it counts as not connected there."
                                        .formatted(
                                                device.kind().words(),
                                                device.id(),
                                                String.join(
                                                        ", ", behaviours.unknownPoints(device)))));
            }
        }
        Set<Device> consumers = new LinkedHashSet<>();
        boolean hasSource = false;
        for (Placed element : circuit.elements()) {
            if (element.element() == Element.LOAD) {
                consumers.add(element.device());
            }
            hasSource |= element.element() == Element.SOURCE;
        }
        consumers.forEach(device -> checkLoad(wiring, device, findings));
        if (!hasSource) {
            findings.add(
                    Finding.warning(
                            "electrical.no-source",
                            Subject.of(ThingKind.LOOM, ""),
                            "The loom has no battery with a live point, so nothing flows from"
                                    + " one."));
        }
        return findings;
    }

    private static void checkLoad(Wiring wiring, Device device, List<Finding> findings) {
        Subject subject = Subject.of(ThingKind.DEVICE, device.id());
        Current load = device.load();
        if (load == null || load.milliamperes() <= 0) {
            findings.add(
                    Finding.note(
                            "electrical.load-unknown",
                            subject,
                            "Nobody has said what %s draws; it counts as nothing."
                                    .formatted(device.id())));
            return;
        }
        Power power = Power.of(wiring.system(), load);
        if (device.kind() != DeviceKind.STARTER && power.compareTo(MOST) > 0) {
            findings.add(
                    Finding.warning(
                            "electrical.load-not-sane",
                            subject,
                            "%s would draw %s, more than %s; look whether amperes were meant."
                                    .formatted(device.id(), power, MOST)));
        }
    }
}
