package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.Readings.ElementReading;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.quantity.Current;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * {@code electrical.switch-overloaded}, {@code ammeter-}, {@code relay-} and {@code contact-overloaded}: what flows through the contacts of
 * a device, or through its winding, beside the most that they carry or its scale shows; {@code electrical.contact-rating-unknown} where
 * nobody said how much that is and the additions raise the current a good deal.
 *
 * <p>Contacts of one device that are fed from one point count together: the current goes in there.
 */
final class ContactCheck {

    /** A current that no contact of a vehicle minds. Own choice. */
    private static final Current HARMLESS = Current.ofMilliamperes(1_000);

    private final Compared looms;
    private final CurrentRules rules;

    ContactCheck(Compared looms, CurrentRules rules) {
        this.looms = looms;
        this.rules = rules;
    }

    List<Problem> find() {
        List<Problem> problems = new ArrayList<>();
        for (Device device : looms.now().loom().devices().values()) {
            if (code(device) != null) {
                looms.now()
                        .worst(one -> amperes(one, device))
                        .flatMap(one -> judge(device, one))
                        .ifPresent(problems::add);
            }
        }
        return problems;
    }

    /** What the rule is called for that kind of device, null where it has no contacts. */
    private static @Nullable String code(Device device) {
        return switch (device.kind()) {
            case SWITCH -> "electrical.switch-overloaded";
            case AMMETER -> "electrical.ammeter-overloaded";
            case RELAY, FLASHER -> "electrical.relay-overloaded";
            case CONTROL_BOX -> "electrical.contact-overloaded";
            case BATTERY,
                    DYNAMO,
                    ALTERNATOR,
                    STARTER,
                    FUSE_BOX,
                    FUSE,
                    SENDER,
                    GAUGE,
                    LAMP,
                    MOTOR,
                    HORN,
                    COIL,
                    DISTRIBUTOR,
                    SOCKET,
                    HEATER,
                    RADIO,
                    JOINT,
                    EARTH_POINT,
                    CONNECTOR ->
                    null;
        };
    }

    /** A control box is made for what its generator gives; what only passes through its main terminals does not count. */
    private static boolean isContact(ElementReading reading, Device device) {
        return switch (reading.element()) {
            case CONTACT, MAKE, BREAK, SENSE, CUT_OUT -> true;
            case LINK -> device.kind() == DeviceKind.AMMETER;
            case SOURCE, GENERATOR, FUSE, COIL, FIELD, ENGINE_OFF, LOAD, EARTH, NONE -> false;
        };
    }

    private static Current current(List<ElementReading> ofDevice, Device device) {
        Map<String, Long> byPoint = new HashMap<>();
        long most = 0;
        for (ElementReading reading : ofDevice) {
            if (isContact(reading, device)) {
                long sum =
                        byPoint.merge(
                                reading.from(),
                                Math.abs(reading.current().milliamperes()),
                                Long::sum);
                most = Math.max(most, sum);
            }
        }
        return Current.ofMilliamperes(most);
    }

    private static Current current(Observed observed, Device device) {
        return current(observed.flow().ofDevice(device.id()), device);
    }

    private static double amperes(Observed observed, Device device) {
        return current(observed, device).toDoubleAmperes();
    }

    private Optional<Problem> judge(Device device, Observed worst) {
        Current rating = device.particulars().rating();
        Current now = current(worst, device);
        double before = looms.stock().most(one -> amperes(one, device));
        if (rating == null) {
            return unknown(device, worst, now, before);
        }
        return now.compareTo(rating) > 0
                ? Optional.of(overloaded(device, worst, rating, before))
                : Optional.empty();
    }

    private Problem overloaded(Device device, Observed worst, Current rating, double before) {
        Current now = current(worst, device);
        Blame blame =
                Blame.of(
                        looms.additions().hasDevice(device.id()),
                        now.toDoubleAmperes() / rating.toDoubleAmperes(),
                        looms.useBefore(
                                one -> amperes(one, device) / rating.toDoubleAmperes(), worst));
        String text =
                "%s takes %s in scenario '%s' and is made for %s.%s%s"
                        .formatted(
                                Words.of(device),
                                Words.of(now),
                                worst.scenario(),
                                Words.of(rating),
                                added(now, before),
                                blame.words(beforeWords(before)));
        String code = code(device);
        Finding finding =
                new Finding(
                        code == null ? "electrical.contact-overloaded" : code,
                        blame.severity(),
                        Subject.of(ThingKind.DEVICE, device.id()),
                        text);
        return new Problem(
                new ElectricalFinding(
                        finding,
                        worst.scenario(),
                        Words.amperes(now),
                        Words.amperes(rating),
                        null,
                        Problem.NO_SINGLE_CHANGE),
                cure(device, rating));
    }

    private static String added(Current now, double before) {
        double added = now.toDoubleAmperes() - before;
        return Double.isNaN(added) || added <= 0
                ? ""
                : " The additions put %s on it."
                        .formatted(Words.of(Current.roundedFromAmperes(added)));
    }

    private static String beforeWords(double before) {
        return Double.isNaN(before) ? "" : Words.of(Current.roundedFromAmperes(before));
    }

    private Optional<Problem> unknown(Device device, Observed worst, Current now, double before) {
        double growth = rules.contactGrowth().value().toDouble();
        boolean isTold =
                !looms.additions().hasDevice(device.id())
                        && now.compareTo(HARMLESS) >= 0
                        && now.toDoubleAmperes() > growth * before;
        if (!isTold) {
            return Optional.empty();
        }
        String text =
                "%s takes %s in scenario '%s', %s as recorded; nobody has said how much its contacts carry."
                        .formatted(
                                Words.of(device),
                                Words.of(now),
                                worst.scenario(),
                                beforeWords(before));
        return Optional.of(
                Problem.told(
                        new ElectricalFinding(
                                Finding.warning(
                                        "electrical.contact-rating-unknown",
                                        Subject.of(ThingKind.DEVICE, device.id()),
                                        text),
                                worst.scenario(),
                                Words.amperes(now),
                                null,
                                null,
                                "Find its rating, or leave it the current of a relay's coil.")));
    }

    private Cure cure(Device device, Current rating) {
        String id = device.id();
        List<Observed> broken =
                looms.now().scenarios().stream()
                        .filter(one -> current(one, device).compareTo(rating) > 0)
                        .sorted(
                                Comparator.comparing((Observed one) -> current(one, device))
                                        .reversed())
                        .toList();
        List<LoadPath> paths =
                broken.getFirst().paths().stream()
                        .filter(path -> !path.charges() && path.leadsThroughDevice(id))
                        .sorted(RatingCheck.newAndLargeFirst(looms.additions()))
                        .toList();
        return new Cure(
                (trial, readings) -> current(readings.ofDevice(id), device).compareTo(rating) <= 0,
                broken,
                Map.of(),
                edge -> edge.element() != null && edge.element().device().equals(id),
                paths);
    }
}
