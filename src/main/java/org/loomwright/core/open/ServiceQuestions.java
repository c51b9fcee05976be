package org.loomwright.core.open;

import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Has every added service as a whole what it usually needs: a relay, a tell-tale, a feed with the ignition off? And every added gauge its lamp and sender? */
final class ServiceQuestions {

    private static final String PANEL_LAMPS = "panel-lamps";

    private final Inquiry inquiry;

    ServiceQuestions(Inquiry inquiry) {
        this.inquiry = inquiry;
    }

    void ask() {
        inquiry.expectations().rows().forEach(this::ask);
    }

    private void ask(Expectation row) {
        switch (row.need()) {
            case RELAY, TELL_TALE, ALWAYS_LIVE -> askOnce(row);
            case PANEL_LAMP -> askForLamps(row);
            case SENDER -> added(row).forEach(gauge -> askForSender(row, gauge));
            case FUSE, SWITCH, OWN_EARTH, POLARITY -> {
                // asked of each device elsewhere
            }
        }
    }

    /** The added devices for which the row holds, in the order of their ids. */
    private List<Device> added(Expectation row) {
        return inquiry.loom().devices().values().stream()
                .filter(inquiry::isNew)
                .filter(device -> row.isOf(device.kind()) && !Inquiry.isTellTale(device))
                .filter(device -> inquiry.serves(device, row.service()))
                .toList();
    }

    private void askOnce(Expectation row) {
        List<Device> added = added(row);
        if (added.size() < row.from()) {
            return;
        }
        String service =
                inquiry.catalogue().findService(row.service()).map(Service::name).orElseThrow();
        String ids = added.stream().map(Device::id).collect(Collectors.joining(", "));
        inquiry.ask(
                row,
                Inquiry.subject(added.getFirst()),
                has(row, added),
                missing(row).formatted(service, ids),
                question(row).formatted(service));
    }

    private boolean has(Expectation row, List<Device> added) {
        return switch (row.need()) {
            case RELAY -> added.stream().allMatch(this::isRelayed);
            case TELL_TALE -> hasTellTale(row);
            case ALWAYS_LIVE -> serving(row).stream().anyMatch(this::isAlwaysLive);
            case FUSE, SWITCH, OWN_EARTH, POLARITY, PANEL_LAMP, SENDER ->
                    throw new IllegalArgumentException(row + " is not one for the service");
        };
    }

    private static String missing(Expectation row) {
        return switch (row.need()) {
            case RELAY -> "The circuit of the %s (%s) is fed without a relay.";
            case TELL_TALE -> "The circuit of the %s (%s) has no tell-tale.";
            default -> "The circuit of the %s (%s) has no feed that is live with the ignition off.";
        };
    }

    private static String question(Expectation row) {
        return switch (row.need()) {
            case RELAY ->
                    "Shall the circuit of the %s have a relay with a fused feed of its own, or does"
                            + " a switch carry its current?";
            case TELL_TALE -> "Which lamp tells the driver that the circuit of the %s is on?";
            default ->
                    "Where does the circuit of the %s take a feed that is live with the ignition"
                            + " off?";
        };
    }

    private List<Device> serving(Expectation row) {
        return inquiry.loom().devices().values().stream()
                .filter(device -> inquiry.serves(device, row.service()))
                .toList();
    }

    private boolean isRelayed(Device device) {
        return inquiry.feedPath(device).anyMatch(passed -> passed.element() == Element.MAKE);
    }

    private boolean hasTellTale(Expectation row) {
        return serving(row).stream()
                .anyMatch(
                        device ->
                                Inquiry.isTellTale(device)
                                        || device.kind() == DeviceKind.SWITCH
                                                && row.isLiftedBy(device.name()));
    }

    private boolean isAlwaysLive(Device device) {
        return device.points().stream()
                .map(point -> device.id() + "/" + point.name())
                .flatMap(place -> inquiry.tracing().supplyAt(place).stream())
                .anyMatch(supply -> supply == Supply.BATTERY || supply == Supply.BATTERY_FUSED);
    }

    /** One lamp lights one gauge at its node; of several gauges the first in order have it. */
    private void askForLamps(Expectation row) {
        for (Device gauge : added(row)) {
            String node = nodeOf(gauge);
            long before = gaugesAt(node).stream().takeWhile(other -> !other.equals(gauge)).count();
            inquiry.ask(
                    row,
                    Inquiry.subject(gauge),
                    before < lampsAt(node),
                    "%s has no lamp to light it.".formatted(Inquiry.called(gauge)),
                    "Which panel lamp lights %s, and from which wire?".formatted(gauge.id()));
        }
    }

    private static String nodeOf(Device device) {
        return device.points().getFirst().node();
    }

    private List<Device> gaugesAt(String node) {
        return inquiry.loom().devices().values().stream()
                .filter(device -> inquiry.isNew(device) && nodeOf(device).equals(node))
                .filter(this::expectsLamp)
                .sorted(Comparator.comparing(Device::id))
                .toList();
    }

    private boolean expectsLamp(Device device) {
        return inquiry.expectations()
                .find(inquiry.serviceOf(device), device.kind(), Expectation.Need.PANEL_LAMP)
                .isPresent();
    }

    private long lampsAt(String node) {
        return inquiry.loom().devices().values().stream()
                .filter(device -> inquiry.isNew(device) && nodeOf(device).equals(node))
                .filter(device -> device.kind() == DeviceKind.LAMP && !Inquiry.isTellTale(device))
                .filter(this::lightsGauges)
                .count();
    }

    /** A panel lamp, or a lamp that serves what a gauge serves. */
    private boolean lightsGauges(Device lamp) {
        return inquiry.serves(lamp, PANEL_LAMPS)
                || inquiry.expectations()
                        .of(inquiry.serviceOf(lamp))
                        .anyMatch(row -> row.need() == Expectation.Need.PANEL_LAMP);
    }

    private void askForSender(Expectation row, Device gauge) {
        boolean hasSender =
                gauge.points().stream()
                        .map(point -> gauge.id() + "/" + point.name())
                        .flatMap(place -> inquiry.joinedTo(place).stream())
                        .map(end -> inquiry.loom().getDevice(end.device()))
                        .anyMatch(device -> device.kind() == DeviceKind.SENDER);
        inquiry.ask(
                row,
                Inquiry.subject(gauge),
                hasSender,
                "No wire leads from %s to a sender.".formatted(Inquiry.called(gauge)),
                "Where does the sender of %s sit, and which wire goes to it?"
                        .formatted(gauge.id()));
    }
}
