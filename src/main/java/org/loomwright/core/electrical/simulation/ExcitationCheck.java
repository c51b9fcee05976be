package org.loomwright.core.electrical.simulation;

import org.loomwright.core.electrical.simulation.Settling.Settled;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;

import java.util.ArrayList;
import java.util.List;

/** Generators that turn fast enough and give nothing, because their fields get no current. */
final class ExcitationCheck {

    private ExcitationCheck() {}

    static List<Finding> of(
            Circuit circuit, Scenario scenario, Settled settled, Current leastExciting) {
        List<Finding> findings = new ArrayList<>();
        for (Placed element : circuit.elements()) {
            if (element.element() == Element.GENERATOR
                    && settled.state().modeOf(element) == State.Mode.UNEXCITED) {
                circuit.findField(element)
                        .map(field -> finding(scenario, field, settled, leastExciting))
                        .ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Finding finding(
            Scenario scenario, Placed field, Settled settled, Current leastExciting) {
        String look =
                field.device().kind() == DeviceKind.DYNAMO
                        ? "the wire to it from the control box"
                        : "the warning lamp that feeds it, that lamp's supply and its wire";
        long flows = Math.abs(settled.solution().current(field.id()).milliamperes());
        return Finding.fault(
                "electrical.generator-not-excited",
                Subject.of(ThingKind.DEVICE, field.device().id()),
                "In scenario '%s' %s %s gives nothing: its field at %s gets %s and needs at least %s; look at %s."
                        .formatted(
                                scenario.name(),
                                field.device().kind().words(),
                                field.device().id(),
                                field.from(),
                                Current.ofMilliamperes(flows),
                                leastExciting,
                                look));
    }
}
