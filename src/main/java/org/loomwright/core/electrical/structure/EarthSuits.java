package org.loomwright.core.electrical.structure;

import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether devices can work with the vehicle's earth, and what to look at where the earth was changed.
 *
 * <p>Source of the list for a changed earth: owners' and trade pages on converting from positive to negative earth (battery leads, coil
 * wires, ammeter, electronic tachometer, fan and some blower motors, pump maybe, radio, dynamo to be polarised again; wipers,
 * starter, lamps and bimetal gauges do not care).
 */
final class EarthSuits {

    private final Wiring wiring;
    private final Loom loom;
    private final EarthPolarity earth;

    EarthSuits(Wiring wiring) {
        this.wiring = wiring;
        this.loom = wiring.loom();
        this.earth = loom.document().vehicle().earth();
    }

    List<ElectricalFinding> findings() {
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Device device : loom.devices().values()) {
            EarthPolarity needed = device.particulars().needsEarth();
            if (needed == null) {
                unsaid(device).ifPresent(findings::add);
            } else if (needed != earth) {
                findings.add(unsuited(device, needed));
            }
            if (wiring.newcomers().changesEarth(loom)) {
                afterChange(device).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private ElectricalFinding unsuited(Device device, EarthPolarity needed) {
        return finding(
                device,
                Severity.FAULT,
                "%s needs %s, the vehicle has %s."
                        .formatted(Words.of(device), Words.of(needed), Words.of(earth)),
                "Take one made for %s, have it converted, or change the vehicle's earth."
                        .formatted(Words.of(earth)));
    }

    /** Nearly everything electronic is made for negative earth. */
    private Optional<ElectricalFinding> unsaid(Device device) {
        if (earth == EarthPolarity.NEGATIVE) {
            return Optional.empty();
        }
        boolean added = wiring.isNew(device);
        return switch (device.kind()) {
            case ALTERNATOR, RADIO ->
                    Optional.of(
                            findOut(
                                    device,
                                    Severity.WARNING,
                                    "most are made for negative earth and would be destroyed"));
            case SOCKET ->
                    Optional.of(
                            findOut(
                                    device,
                                    added ? Severity.WARNING : Severity.NOTE,
                                    "the metal of what is plugged in would be live to the body"));
            case FLASHER ->
                    added
                            ? Optional.of(
                                    findOut(
                                            device,
                                            Severity.WARNING,
                                            "an electronic one, as for LED lamps, is made for one"
                                                    + " earth only"))
                            : Optional.empty();
            case GAUGE ->
                    added && isTachometer(device)
                            ? Optional.of(
                                    findOut(
                                            device,
                                            Severity.WARNING,
                                            "an electronic one is made for one earth only"))
                            : Optional.empty();
            case BATTERY,
                    DYNAMO,
                    STARTER,
                    CONTROL_BOX,
                    AMMETER,
                    FUSE_BOX,
                    FUSE,
                    SWITCH,
                    RELAY,
                    SENDER,
                    LAMP,
                    MOTOR,
                    HORN,
                    COIL,
                    DISTRIBUTOR,
                    HEATER,
                    JOINT,
                    EARTH_POINT,
                    CONNECTOR ->
                    Optional.empty();
        };
    }

    private boolean isTachometer(Device device) {
        return wiring.serviceOf(device).filter("tachometer"::equals).isPresent();
    }

    private ElectricalFinding findOut(Device device, Severity severity, String why) {
        return finding(
                device,
                severity,
                "Nobody has said which earth %s needs; the vehicle has positive earth, and %s."
                        .formatted(Words.of(device), why),
                "Find out which earth it is made for and write it down.");
    }

    private Optional<ElectricalFinding> afterChange(Device device) {
        if (wiring.isNew(device) || device.particulars().needsEarth() != null) {
            return Optional.empty();
        }
        return whatToDo(device)
                .map(
                        remedy ->
                                finding(
                                        device,
                                        Severity.WARNING,
                                        "The vehicle's earth changes to %s; look at %s."
                                                .formatted(Words.of(earth), Words.of(device)),
                                        remedy));
    }

    private Optional<String> whatToDo(Device device) {
        return Optional.ofNullable(
                switch (device.kind()) {
                    case BATTERY -> "Turn the battery or its leads round.";
                    case COIL -> "Change over the two wires of the coil.";
                    case AMMETER -> "Change over its wires, or it reads the wrong way.";
                    case DYNAMO -> "Polarise the dynamo again before the engine runs.";
                    case RADIO, SOCKET, ALTERNATOR ->
                            "Find out whether it can work with this earth.";
                    case HEATER ->
                            "See which way its motor turns; change over its wires if need be.";
                    case MOTOR ->
                            isWiper(device)
                                    ? null
                                    : "See which way it turns and whether it pumps; change over its"
                                            + " wires if need be.";
                    case FLASHER ->
                            "If it is electronic, find out whether it can work with this earth.";
                    case GAUGE ->
                            isTachometer(device)
                                    ? "Have an electronic one converted, or replace it."
                                    : null;
                    case STARTER,
                            CONTROL_BOX,
                            FUSE_BOX,
                            FUSE,
                            SWITCH,
                            RELAY,
                            SENDER,
                            LAMP,
                            HORN,
                            DISTRIBUTOR,
                            JOINT,
                            EARTH_POINT,
                            CONNECTOR ->
                            null;
                });
    }

    private boolean isWiper(Device device) {
        return wiring.serviceOf(device).filter("wiper"::equals).isPresent();
    }

    private static ElectricalFinding finding(
            Device device, Severity severity, String text, String remedy) {
        return ElectricalFinding.of(
                new Finding("electrical.polarity", severity, Words.subject(device), text), remedy);
    }
}
