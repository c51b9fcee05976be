package org.loomwright.core.electrical.structure;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Provenance.Status;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.check.Figure;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.quantity.Voltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether devices are made for the vehicle's voltage, and what to look at where the voltage was changed.
 *
 * <p>Source of the list for a changed voltage: owners' and trade pages (from 6 V to 12 V the cable can stay; bulbs, coil, horn, wiper,
 * gauges and radio need change or a dropper).
 */
final class VoltageSuits {

    private final Wiring wiring;
    private final Loom loom;
    private final Voltage system;

    VoltageSuits(Wiring wiring) {
        this.wiring = wiring;
        this.loom = wiring.loom();
        this.system = loom.document().vehicle().system();
    }

    List<ElectricalFinding> findings() {
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Device device : loom.devices().values()) {
            Voltage made = device.particulars().voltage();
            if (made != null) {
                unsuited(device, made).ifPresent(findings::add);
            } else if (wiring.newcomers().changesSystem(loom) && !wiring.isNew(device)) {
                afterChange(device).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<ElectricalFinding> unsuited(Device device, Voltage made) {
        int order = made.compareTo(system);
        if (order == 0) {
            return Optional.empty();
        }
        String consequence = order < 0 ? "it would be overloaded" : "it would work weakly or not";
        return Optional.of(
                finding(
                        device,
                        order < 0 ? Severity.FAULT : Severity.WARNING,
                        "%s is made for %s, the vehicle has %s: %s."
                                .formatted(Words.of(device), made, system, consequence),
                        order < 0
                                ? "Take one for %s, or feed it through a dropper made for its current."
                                        .formatted(system)
                                : "Take one for %s.".formatted(system),
                        made));
    }

    private Optional<ElectricalFinding> afterChange(Device device) {
        if (!cares(device)) {
            return Optional.empty();
        }
        boolean rises = system.compareTo(recorded()) > 0;
        return Optional.of(
                finding(
                        device,
                        Severity.WARNING,
                        "The vehicle's voltage changes from %s to %s, and nobody has said which %s is made for."
                                .formatted(recorded(), system, Words.of(device)),
                        "Change it for one made for %s%s, and write its voltage and its current down."
                                .formatted(system, rises ? ", or feed it through a dropper" : ""),
                        null));
    }

    private Voltage recorded() {
        return wiring.newcomers().recorded().document().vehicle().system();
    }

    private static boolean cares(Device device) {
        return switch (device.kind()) {
            case BATTERY,
                    DYNAMO,
                    ALTERNATOR,
                    STARTER,
                    CONTROL_BOX,
                    RELAY,
                    FLASHER,
                    GAUGE,
                    LAMP,
                    MOTOR,
                    HORN,
                    COIL,
                    HEATER,
                    RADIO,
                    SOCKET ->
                    true;
            case AMMETER,
                    FUSE_BOX,
                    FUSE,
                    SWITCH,
                    SENDER,
                    DISTRIBUTOR,
                    JOINT,
                    EARTH_POINT,
                    CONNECTOR ->
                    false;
        };
    }

    private ElectricalFinding finding(
            Device device, Severity severity, String text, String remedy, @Nullable Voltage made) {
        return new ElectricalFinding(
                new Finding("electrical.system-voltage", severity, Words.subject(device), text),
                "",
                made == null ? null : new Figure(system.toVolts(), "V"),
                made == null ? null : new Figure(made.toVolts(), "V"),
                made == null ? null : new Provenance(Status.FOUND, "said of the device"),
                remedy);
    }
}
