package org.loomwright.core.kit;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.kit.Question.Choice;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Fills the questions of a recipe with what one loom offers. */
final class LoomQuestions {

    /** Where wires branch, so that one of them can be moved away. */
    private static final Set<DeviceKind> BRANCHING =
            Set.of(
                    DeviceKind.JOINT,
                    DeviceKind.FUSE_BOX,
                    DeviceKind.FUSE,
                    DeviceKind.CONNECTOR,
                    DeviceKind.SWITCH,
                    DeviceKind.CONTROL_BOX);

    private final Loom loom;
    private final Catalogue catalogue;
    private final Behaviours behaviours;
    private final Routes routes;

    LoomQuestions(Loom loom, Catalogue catalogue, Behaviours behaviours) {
        this.loom = loom;
        this.catalogue = catalogue;
        this.behaviours = behaviours;
        this.routes = new Routes(loom);
    }

    List<Question> of(Recipe recipe) {
        return recipe.questions().stream().map(this::withUsual).map(this::filled).toList();
    }

    /** An usual answer may be the vehicle's own earth, or the other one. */
    private Question withUsual(Question question) {
        boolean positive = loom.document().vehicle().earth() == EarthPolarity.POSITIVE;
        return switch (question.usual()) {
            case "{vehicle.earth}" ->
                    question.with(question.choices(), positive ? "positive" : "negative");
            case "{other.earth}" ->
                    question.with(question.choices(), positive ? "negative" : "positive");
            case null, default -> question;
        };
    }

    private Question filled(Question question) {
        return switch (question.kind()) {
            case NODE -> filledWithNodes(question);
            case DEVICE -> filledWithDevices(question);
            case WIRE -> filledWithWires(question);
            case YES_NO ->
                    question.with(
                            List.of(new Choice("yes", "yes"), new Choice("no", "no")),
                            question.usual());
            case CHOICE, AMPERES, WATTS, LENGTH -> question;
        };
    }

    private Question filledWithNodes(Question question) {
        Set<String> likely = new LinkedHashSet<>();
        likelyDevices(question)
                .forEach(device -> device.points().stream().map(Point::node).forEach(likely::add));
        String usual = atRank(List.copyOf(likely), question.rank());
        Set<String> nodes = new LinkedHashSet<>(likely);
        nodes.addAll(loom.nodes().keySet());
        List<Choice> choices =
                nodes.stream()
                        .map(id -> new Choice(id, id + ", " + loom.getNode(id).name()))
                        .toList();
        return question.with(choices, usual == null ? loom.datum() : usual);
    }

    /** Devices that fit, those of the first selector first, each selector's nearest to the datum first. */
    private List<Device> likelyDevices(Question question) {
        Set<Device> devices = new LinkedHashSet<>();
        for (Selector selector : question.near()) {
            loom.devices().values().stream()
                    .filter(device -> selector.fits(device, catalogue))
                    .sorted(Comparator.comparing(this::fromDatum))
                    .forEach(devices::add);
        }
        return List.copyOf(devices);
    }

    private Length fromDatum(Device device) {
        return routes.fromDatum(device.points().getFirst().node());
    }

    private static @Nullable String atRank(List<String> likely, int rank) {
        return likely.isEmpty() ? null : likely.get(Math.min(rank, likely.size()) - 1);
    }

    private Question filledWithDevices(Question question) {
        List<Device> devices = likelyDevices(question);
        List<Choice> choices =
                devices.stream()
                        .map(device -> new Choice(device.id(), device.id() + ", " + device.name()))
                        .toList();
        String usual = atRank(devices.stream().map(Device::id).toList(), question.rank());
        return question.with(choices, usual);
    }

    private Question filledWithWires(Question question) {
        Tracing tracing = Tracing.of(loom, catalogue, behaviours);
        List<Wire> wires =
                tracing.all().stream()
                        .filter(trace -> isOffered(trace, question))
                        .sorted(
                                Comparator.comparingLong(this::milliamperes)
                                        .reversed()
                                        .thenComparing(WireTrace::wire))
                        .map(trace -> loom.getWire(trace.wire()))
                        .toList();
        List<Choice> choices =
                new ArrayList<>(wires.stream().map(wire -> choice(wire, tracing)).toList());
        String usual = atRank(wires.stream().map(Wire::id).toList(), question.rank());
        return question.with(choices, question.rank() > wires.size() ? null : usual);
    }

    private boolean isOffered(WireTrace trace, Question question) {
        Side source = trace.source();
        if (source == null
                || trace.role() != Role.LIVE
                || !question.supplies().contains(trace.supply())) {
            return false;
        }
        Wire wire = loom.getWire(trace.wire());
        Device from = loom.getDevice(wire.end(source).device());
        Device to = loom.getDevice(other(wire, source).device());
        return BRANCHING.contains(from.kind())
                && !BRANCHING_ONLY.contains(to.kind())
                && !trace.loads().isEmpty()
                && question.near().stream()
                        .anyMatch(
                                selector ->
                                        trace.loads().stream()
                                                .map(loom::getDevice)
                                                .allMatch(load -> selector.fits(load, catalogue)));
    }

    /** Where a wire ends that feeds many things: moving it would move them all. */
    private static final Set<DeviceKind> BRANCHING_ONLY =
            Set.of(DeviceKind.JOINT, DeviceKind.FUSE_BOX, DeviceKind.CONNECTOR);

    private static WireEnd other(Wire wire, Side side) {
        return side == Side.A ? wire.b() : wire.a();
    }

    private long milliamperes(WireTrace trace) {
        return trace.loads().stream()
                .map(loom::getDevice)
                .map(Device::load)
                .filter(Objects::nonNull)
                .mapToLong(load -> load.milliamperes())
                .sum();
    }

    private Choice choice(Wire wire, Tracing tracing) {
        String loads = String.join(", ", tracing.get(wire.id()).loads());
        return new Choice(
                wire.id(),
                "%s, %s %s to %s"
                        .formatted(
                                wire.id(),
                                wire.colour(),
                                wire.circuit(),
                                Optional.of(loads)
                                        .filter(text -> !text.isEmpty())
                                        .orElse("nothing")));
    }
}
