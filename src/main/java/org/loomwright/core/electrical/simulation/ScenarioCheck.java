package org.loomwright.core.electrical.simulation;

import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Temperature;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** Whether a loom can be in the state that a scenario describes. */
final class ScenarioCheck {

    private static final Temperature COLDEST = Temperature.ofCelsius(-60);
    private static final Temperature HOTTEST = Temperature.ofCelsius(200);

    private ScenarioCheck() {}

    static List<Finding> of(Loom loom, Scenario scenario) {
        List<Finding> findings = new ArrayList<>();
        if (scenario.conductors().compareTo(COLDEST) < 0
                || scenario.conductors().compareTo(HOTTEST) > 0) {
            findings.add(
                    Finding.fault(
                            "electrical.temperature-not-sane",
                            Subject.of(ThingKind.SETTINGS, ""),
                            "Scenario '%s' has conductors at %s; it must be %s to %s."
                                    .formatted(
                                            scenario.name(),
                                            scenario.conductors(),
                                            COLDEST,
                                            HOTTEST)));
        }
        new TreeMap<>(scenario.closed())
                .forEach(
                        (id, points) -> {
                            Device device = loom.devices().get(id);
                            if (device == null || device.kind() != DeviceKind.SWITCH) {
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

    private static void checkPoint(
            Scenario scenario, Device device, String point, List<Finding> findings) {
        boolean isContact =
                device.points().stream().anyMatch(there -> there.name().equals(point))
                        && !point.equals("FEED");
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
