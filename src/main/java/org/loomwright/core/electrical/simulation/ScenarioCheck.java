package org.loomwright.core.electrical.simulation;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Temperature;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** Whether a loom can be in the state that a scenario describes. */
final class ScenarioCheck {

    private ScenarioCheck() {}

    static List<Finding> of(Wiring wiring, Scenario scenario) {
        List<Finding> findings = new ArrayList<>();
        checkTemperatures(scenario, findings);
        new TreeMap<>(scenario.closed())
                .forEach(
                        (id, points) -> {
                            Device device = wiring.devices().get(id);
                            if (device == null || !isSet(device)) {
                                findings.add(
                                        fault(
                                                id,
                                                "Scenario '%s' sets switch %s, which the loom does not have."
                                                        .formatted(scenario.name(), id)));
                            } else {
                                new TreeSet<>(points)
                                        .forEach(
                                                point ->
                                                        checkPoint(
                                                                scenario, device, point, findings));
                            }
                        });
        return findings;
    }

    /** A socket is set by plugging something in. */
    private static boolean isSet(Device device) {
        return device.kind() == DeviceKind.SWITCH || device.kind() == DeviceKind.SOCKET;
    }

    private static void checkTemperatures(Scenario scenario, List<Finding> findings) {
        if (isBeyondMeasure(scenario.conductors()) || isBeyondMeasure(scenario.ambient())) {
            findings.add(
                    temperature(
                            "Scenario '%s' has conductors at %s and air at %s; both must be %s to %s."
                                    .formatted(
                                            scenario.name(),
                                            scenario.conductors(),
                                            scenario.ambient(),
                                            Scenario.COLDEST,
                                            Scenario.HOTTEST)));
        } else if (scenario.ambient().compareTo(scenario.conductors()) > 0) {
            findings.add(
                    temperature(
                            "Scenario '%s' has conductors at %s in air at %s; nothing could keep them colder than the air."
                                    .formatted(
                                            scenario.name(),
                                            scenario.conductors(),
                                            scenario.ambient())));
        }
    }

    private static boolean isBeyondMeasure(Temperature temperature) {
        return temperature.compareTo(Scenario.COLDEST) < 0
                || temperature.compareTo(Scenario.HOTTEST) > 0;
    }

    private static Finding temperature(String text) {
        return Finding.fault(
                "electrical.temperature-not-sane", Subject.of(ThingKind.SETTINGS, ""), text);
    }

    private static void checkPoint(
            Scenario scenario, Device device, String point, List<Finding> findings) {
        boolean isContact =
                device.points().stream().anyMatch(there -> there.name().equals(point))
                        && (device.kind() == DeviceKind.SOCKET || !point.equals("FEED"));
        if (!isContact) {
            findings.add(
                    fault(
                            device.id(),
                            "Scenario '%s' closes contact %s of switch %s, which has no such contact."
                                    .formatted(scenario.name(), point, device.id())));
        }
    }

    private static Finding fault(String device, String text) {
        return Finding.fault(
                "electrical.switch-position-impossible",
                Subject.of(ThingKind.DEVICE, device),
                text);
    }
}
