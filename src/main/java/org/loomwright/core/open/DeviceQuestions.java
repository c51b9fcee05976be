package org.loomwright.core.open;

import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.VehicleSheet;
import org.loomwright.core.open.Expectation.Need;
import org.loomwright.core.quantity.Voltage;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Is everything said of the devices themselves: current, polarity, voltage, what is marked on fuses and contacts? */
final class DeviceQuestions {

    /** What accessories are made for unless somebody says otherwise; common practice, no source. */
    private static final Voltage USUAL = Voltage.ofMillivolts(12_000);

    /** Words of names that tell of electronics inside; common practice, no source. */
    private static final Set<String> ELECTRONIC = Set.of("led", "leds", "electronic", "transistor");

    private final Inquiry inquiry;
    private final Set<String> carryingFuses = new HashSet<>();
    private final Set<String> carryingContacts = new HashSet<>();

    DeviceQuestions(Inquiry inquiry) {
        this.inquiry = inquiry;
        for (Device consumer : inquiry.newConsumers()) {
            inquiry.feedPath(consumer).forEach(this::note);
            inquiry.earthSideSwitches(consumer)
                    .forEach(device -> carryingContacts.add(device.id()));
        }
    }

    private void note(Passed passed) {
        if (passed.element() == Element.FUSE) {
            carryingFuses.add(fuse(passed.device(), passed.from(), passed.to()));
        }
        if (Set.of(Element.CONTACT, Element.MAKE, Element.BREAK).contains(passed.element())) {
            carryingContacts.add(passed.device());
        }
    }

    /** One name for a fuse, whichever way it is passed. */
    private static String fuse(String device, String one, String other) {
        return one.compareTo(other) < 0
                ? "%s/%s-%s".formatted(device, one, other)
                : "%s/%s-%s".formatted(device, other, one);
    }

    void ask() {
        for (Device device : inquiry.loom().devices().values()) {
            if (!inquiry.loadsOf(device).isEmpty()) {
                askForLoad(device);
                askForVoltage(device);
            }
            askForPolarity(device);
            inquiry.fusesOf(device).forEach(this::askForFuse);
            askForContacts(device);
        }
    }

    private void askForLoad(Device device) {
        inquiry.ask(
                inquiry.isNew(device) ? OpenRule.LOAD : OpenRule.STOCK_LOAD,
                Inquiry.subject(device),
                device.load() != null,
                "Nobody said how much current %s takes.".formatted(Inquiry.called(device)),
                "How many amperes, or watts, does %s take?".formatted(device.id()));
    }

    private void askForVoltage(Device device) {
        VehicleSheet present = inquiry.loom().document().vehicle();
        boolean wasChanged =
                !present.system().equals(inquiry.stock().document().vehicle().system());
        boolean mayBeWrong = inquiry.isNew(device) && !present.system().equals(USUAL);
        if (wasChanged || mayBeWrong) {
            inquiry.ask(
                    OpenRule.VOLTAGE,
                    Inquiry.subject(device),
                    device.particulars().voltage() != null,
                    "The system has %s, and nobody said for which voltage %s is made."
                            .formatted(present.system(), Inquiry.called(device)),
                    "For which voltage is %s made?".formatted(device.id()));
        }
    }

    private void askForPolarity(Device device) {
        boolean wasChanged =
                inquiry.loom().document().vehicle().earth()
                        != inquiry.stock().document().vehicle().earth();
        if (!inquiry.isNew(device) && !wasChanged) {
            return;
        }
        boolean isSaid = device.particulars().needsEarth() != null;
        String text =
                "%s may work with one earth only, and nobody said which."
                        .formatted(Inquiry.called(device));
        String question =
                "Does %s need positive or negative earth, or has it to be converted?"
                        .formatted(device.id());
        Optional<Expectation> expected =
                inquiry.expectations()
                        .find(inquiry.serviceOf(device), device.kind(), Need.POLARITY);
        expected.ifPresent(
                row -> inquiry.ask(row, Inquiry.subject(device), isSaid, text, question));
        if (expected.isEmpty() && isElectronic(device)) {
            inquiry.ask(OpenRule.POLARITY, Inquiry.subject(device), isSaid, text, question);
        }
    }

    private static boolean isElectronic(Device device) {
        return Arrays.stream(device.name().toLowerCase(Locale.ROOT).split("[^a-z]+"))
                .anyMatch(ELECTRONIC::contains);
    }

    private void askForFuse(Placed placed) {
        Device device = placed.device();
        boolean protectsAdditions =
                inquiry.isNew(device)
                        || carryingFuses.contains(fuse(device.id(), placed.from(), placed.to()));
        inquiry.ask(
                protectsAdditions ? OpenRule.FUSE_RATING : OpenRule.STOCK_FUSE_RATING,
                Inquiry.subject(device),
                isMarked(placed),
                "Nobody said what is marked on the fuse from %s to %s of %s."
                        .formatted(placed.from(), placed.to(), Inquiry.called(device)),
                "Which fuse sits between %s and %s of %s: glass or blade, and what is marked on it?"
                        .formatted(placed.from(), placed.to(), device.id()));
    }

    private static boolean isMarked(Placed placed) {
        List<String> ends = List.of(placed.from(), placed.to());
        return placed.device().particulars().fuses().stream()
                .anyMatch(fitted -> Stream.of(fitted.from(), fitted.to()).allMatch(ends::contains));
    }

    private void askForContacts(Device device) {
        boolean hasContacts =
                device.kind() == DeviceKind.SWITCH || device.kind() == DeviceKind.RELAY;
        if (hasContacts && carryingContacts.contains(device.id())) {
            inquiry.ask(
                    OpenRule.CONTACT_RATING,
                    Inquiry.subject(device),
                    device.particulars().rating() != null,
                    "Additions take current through %s, and nobody said how much its contacts carry."
                            .formatted(Inquiry.called(device)),
                    "How many amperes do the contacts of %s carry?".formatted(device.id()));
        }
    }
}
