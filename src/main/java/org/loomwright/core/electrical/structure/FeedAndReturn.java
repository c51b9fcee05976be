package org.loomwright.core.electrical.structure;

import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.simulation.Placed;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Severity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Loads and coils that no current can get to, or that it cannot leave. */
final class FeedAndReturn {

    private final Wiring wiring;
    private final Tracing tracing;

    FeedAndReturn(Wiring wiring) {
        this.wiring = wiring;
        this.tracing = wiring.tracing();
    }

    List<ElectricalFinding> findings() {
        List<ElectricalFinding> findings = new ArrayList<>();
        for (Element element : List.of(Element.LOAD, Element.COIL)) {
            wiring.elements(element).forEach(load -> check(load, findings));
        }
        return findings;
    }

    /** A warning lamp between ignition and dynamo has a feed on both sides; one of them gives way while the dynamo stands. */
    private void check(Placed load, List<ElectricalFinding> findings) {
        Optional<Supply> from = tracing.supplyAt(load.fromNode());
        Optional<Supply> to = tracing.supplyAt(load.toNode());
        boolean goesOn =
                from.isPresent() && leaves(load.toNode(), to)
                        || to.isPresent() && leaves(load.fromNode(), from);
        if (from.isEmpty() && to.isEmpty()) {
            if (hasBattery()) {
                findings.add(noFeed(load));
            }
        } else if (!goesOn && !excites(load)) {
            findings.add(noReturn(load));
        }
    }

    private boolean leaves(String node, Optional<Supply> supply) {
        boolean intoDynamo = supply.filter(it -> it == Supply.GENERATOR).isPresent();
        return tracing.reachesBody(node) || intoDynamo;
    }

    /** The warning lamp of an alternator is its exciter: its current leaves through the field. */
    private boolean excites(Placed load) {
        return wiring.elements(Element.FIELD).stream()
                .flatMap(field -> Stream.of(field.fromNode(), field.toNode()))
                .anyMatch(node -> isReachedThrough(load, node));
    }

    private boolean isReachedThrough(Placed load, String node) {
        return wiring.loom().wires().values().stream()
                .filter(wire -> wire.a().place().equals(node) || wire.b().place().equals(node))
                .flatMap(wire -> tracing.get(wire.id()).path().stream())
                .anyMatch(
                        passed ->
                                passed.element() == load.element()
                                        && passed.device().equals(load.device().id()));
    }

    /** Without a battery the loom is part of another one and fed from there. */
    private boolean hasBattery() {
        return !wiring.elements(Element.SOURCE).isEmpty();
    }

    private ElectricalFinding noFeed(Placed load) {
        return finding(
                "electrical.no-feed",
                load,
                "No source reaches %s, neither at %s nor at %s, except through another load."
                        .formatted(words(load), load.from(), load.to()),
                "Join %s to the wire or the fuse that is to feed it."
                        .formatted(load.device().id()));
    }

    private ElectricalFinding noReturn(Placed load) {
        String feed = wiring.feedOf(load).orElse(load.fromNode());
        String end = Wiring.otherEnd(load, feed);
        return finding(
                "electrical.no-return",
                load,
                "Current can reach %s but not leave it: nothing joins %s to the body, neither a wire nor its own body."
                        .formatted(words(load), end),
                "Run a wire from %s to an earth point.".formatted(end));
    }

    private static String words(Placed load) {
        String device = Words.of(load.device());
        return load.element() == Element.COIL ? "the coil of " + device : device;
    }

    private ElectricalFinding finding(String code, Placed load, String text, String remedy) {
        boolean added = wiring.isNew(load.device());
        return ElectricalFinding.of(
                new Finding(
                        code,
                        added ? Severity.FAULT : Severity.WARNING,
                        Words.subject(load.device()),
                        added ? text : text + " It was recorded so; a wire may be missing there."),
                remedy);
    }
}
