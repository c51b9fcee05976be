package org.loomwright.core.open;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Origin;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.electrical.simulation.Behaviour;
import org.loomwright.core.electrical.simulation.Behaviours;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.open.OpenReport.Score;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** One loom under questions: what it says, and what was asked so far. */
final class Inquiry {

    /** Common practice, no source. */
    private static final List<String> TELL_TALE_WORDS =
            List.of("tell-tale", "telltale", "warning", "pilot");

    private final Loom stock;
    private final AmendedLoom amended;
    private final Catalogue catalogue;
    private final Behaviours behaviours;
    private final Expectations expectations;
    private final Tracing tracing;
    private final Map<String, List<WireEnd>> ends = new HashMap<>();
    private final List<Asked> asked = new ArrayList<>();

    /** One question, with its open point where nobody answered it. */
    private record Asked(OpenRule rule, int weight, @Nullable OpenPoint open) {}

    Inquiry(
            Loom stock,
            AmendedLoom amended,
            Catalogue catalogue,
            Behaviours behaviours,
            Expectations expectations) {
        this.stock = stock;
        this.amended = amended;
        this.catalogue = catalogue;
        this.behaviours = behaviours;
        this.expectations = expectations;
        tracing = Tracing.of(amended.loom(), catalogue, behaviours);
        for (Wire wire : loom().wires().values()) {
            ends.computeIfAbsent(wire.a().place(), place -> new ArrayList<>()).add(wire.b());
            ends.computeIfAbsent(wire.b().place(), place -> new ArrayList<>()).add(wire.a());
        }
    }

    Loom stock() {
        return stock;
    }

    AmendedLoom amended() {
        return amended;
    }

    Loom loom() {
        return amended.loom();
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Expectations expectations() {
        return expectations;
    }

    Tracing tracing() {
        return tracing;
    }

    /** Asks what follows from the work itself. */
    void ask(OpenRule rule, Subject subject, boolean said, String text, String question) {
        ask(rule, rule.weight(), subject, said, text, question, null);
    }

    /** Asks for what the table expects. */
    void ask(Expectation expected, Subject subject, boolean said, String text, String question) {
        OpenRule rule = expected.need().rule();
        String withReason = "%s %s".formatted(text, sentence(expected.why()));
        ask(rule, rule.weight(), subject, said, withReason, question, expected.provenance());
    }

    private static String sentence(String clause) {
        return clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1) + ".";
    }

    void ask(
            OpenRule rule,
            int weight,
            Subject subject,
            boolean said,
            String text,
            String question,
            @Nullable Provenance basis) {
        OpenPoint open = said ? null : new OpenPoint(rule, subject, weight, text, question, basis);
        asked.add(new Asked(rule, weight, open));
    }

    List<OpenPoint> open() {
        return asked.stream()
                .map(Asked::open)
                .flatMap(Stream::ofNullable)
                .sorted(OpenPoint.HEAVIEST_FIRST)
                .toList();
    }

    Score score(Predicate<NeededFor> counts) {
        long said = 0;
        long all = 0;
        for (Asked question : asked) {
            if (counts.test(question.rule().neededFor())) {
                all += question.weight();
                said += question.open() == null ? question.weight() : 0;
            }
        }
        return new Score(said, all);
    }

    /** Whether an amendment added or changed the part. */
    boolean isNew(ThingKind kind, String id) {
        return !(amended.origin(kind, id) instanceof Origin.Stock);
    }

    boolean isNew(Device device) {
        return isNew(ThingKind.DEVICE, device.id());
    }

    Optional<Service> serviceOf(Device device) {
        return Tracing.serviceOf(device, catalogue);
    }

    boolean serves(Device device, String service) {
        return serviceOf(device).map(Service::code).filter(service::equals).isPresent();
    }

    /** Where the device takes current; empty for what takes none, and for starters, whose current nothing here is sized by. */
    List<Placed> loadsOf(Device device) {
        if (device.kind() == DeviceKind.STARTER) {
            return List.of();
        }
        return behaviours.of(device).stream()
                .filter(it -> it.element() == Element.LOAD || it.element() == Element.COIL)
                .toList();
    }

    /** The fuses in the device. */
    List<Placed> fusesOf(Device device) {
        return behaviours.of(device).stream().filter(it -> it.element() == Element.FUSE).toList();
    }

    /** The devices that an amendment added or changed and that take current, in the order of their ids. */
    List<Device> newConsumers() {
        return loom().devices().values().stream()
                .filter(this::isNew)
                .filter(device -> !loadsOf(device).isEmpty())
                .toList();
    }

    /** What the feed of the device leads through. */
    Stream<Passed> feedPath(Device device) {
        return nodesOf(device).flatMap(node -> tracing.pathTo(node).stream()).flatMap(List::stream);
    }

    /** The switches on the earth side of the device: between a point of it that is not earthed outright, and the body. */
    Stream<Device> earthSideSwitches(Device device) {
        return nodesOf(device)
                .filter(node -> !tracing.isReturn(node) && tracing.reachesBody(node))
                .flatMap(node -> joinedTo(node).stream())
                .map(end -> loom().getDevice(end.device()))
                .filter(joined -> joined.kind() == DeviceKind.SWITCH);
    }

    private Stream<String> nodesOf(Device device) {
        return loadsOf(device).stream()
                .flatMap(load -> Stream.of(load.fromNode(), load.toNode()))
                .filter(node -> !node.equals(Behaviour.BODY));
    }

    /** The far ends of the wires at the place. */
    List<WireEnd> endsAt(String place) {
        return ends.getOrDefault(place, List.of());
    }

    /** The ends of the wires, and of the wires joined to these at their points, that begin at the place; without the place itself. */
    List<WireEnd> joinedTo(String place) {
        Set<String> seen = new HashSet<>(Set.of(place));
        List<WireEnd> found = new ArrayList<>();
        Deque<String> waiting = new ArrayDeque<>(List.of(place));
        while (!waiting.isEmpty()) {
            for (WireEnd end : endsAt(waiting.remove())) {
                if (seen.add(end.place())) {
                    found.add(end);
                    waiting.add(end.place());
                }
            }
        }
        return found;
    }

    /** Whether it is a lamp that tells the driver something, or a switch with one in it. */
    static boolean isTellTale(Device device) {
        String name = device.name().toLowerCase(Locale.ROOT);
        boolean mayBe = device.kind() == DeviceKind.LAMP || device.kind() == DeviceKind.SWITCH;
        return mayBe && TELL_TALE_WORDS.stream().anyMatch(name::contains);
    }

    static Subject subject(Device device) {
        return Subject.of(ThingKind.DEVICE, device.id());
    }

    static String called(Device device) {
        return "%s (%s)".formatted(device.id(), device.name());
    }
}
