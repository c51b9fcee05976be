package org.loomwright.core.electrical.check.current;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.electrical.check.ElectricalFinding;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.Routes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Live wires without a fuse before them: {@code electrical.unfused-new} for a new one that leads to anything but a fuse, {@code
 * electrical.fuse-far-from-source} for one that leads to a fuse too far away, {@code electrical.unfused-original} once for each circuit
 * that is like that in the recorded loom, with its metres.
 */
final class UnfusedCheck {

    private final Loom loom;
    private final @Nullable Loom recorded;
    private final Tracing tracing;
    private final CurrentRules rules;
    private final Additions additions;
    private final Routes routes;
    private final Set<String> fusePlaces = new HashSet<>();
    private final List<Wire> unfused;

    UnfusedCheck(Compared looms, Tracing tracing, CurrentRules rules, List<FuseUnit> fuses) {
        this.loom = looms.now().loom();
        this.recorded = looms.recorded() == null ? null : looms.recorded().loom();
        this.tracing = tracing;
        this.rules = rules;
        this.additions = looms.additions();
        this.routes = new Routes(loom);
        for (FuseUnit fuse : fuses) {
            fusePlaces.add(Flow.place(fuse.device().id(), fuse.from()));
            fusePlaces.add(Flow.place(fuse.device().id(), fuse.to()));
        }
        this.unfused =
                tracing.all().stream()
                        .filter(UnfusedCheck::isUnfused)
                        .map(trace -> loom.getWire(trace.wire()))
                        .toList();
    }

    private static boolean isUnfused(WireTrace trace) {
        return trace.role() == Role.LIVE
                && trace.supply() != Supply.NONE
                && trace.source() != null
                && trace.fuse().isEmpty();
    }

    List<Problem> find() {
        List<Problem> problems = new ArrayList<>();
        Map<String, List<Wire>> original = new TreeMap<>();
        for (Wire wire : unfused) {
            if (isOriginal(wire)) {
                original.computeIfAbsent(wire.circuit(), circuit -> new ArrayList<>()).add(wire);
            } else {
                judge(wire, problems);
            }
        }
        original.forEach((circuit, wires) -> problems.add(original(circuit, wires)));
        return problems;
    }

    /** A new wire in the place of a recorded one is as original in this respect. */
    private boolean isOriginal(Wire wire) {
        if (!additions.hasWire(wire.id())) {
            return true;
        }
        Wire before = recorded == null ? null : recorded.wires().get(wire.id());
        return before != null
                && before.a().isOnSamePointAs(wire.a())
                && before.b().isOnSamePointAs(wire.b());
    }

    private void judge(Wire wire, List<Problem> problems) {
        if (!fusePlaces.contains(far(wire).place())) {
            problems.add(unfused(wire));
            return;
        }
        Length way = fromSource(wire, new HashSet<>());
        Sourced<Length> within = within(wire);
        if (way.isLongerThan(within.value())) {
            problems.add(tooFar(wire, way, within));
        }
    }

    private WireEnd near(Wire wire) {
        Side source = tracing.get(wire.id()).source();
        return wire.end(source == null ? Side.A : source);
    }

    private WireEnd far(Wire wire) {
        return wire.end(tracing.get(wire.id()).source() == Side.B ? Side.A : Side.B);
    }

    private Length length(Wire wire) {
        return routes.lengthOf(wire)
                .plus(loom.getPoint(wire.a()).tail())
                .plus(loom.getPoint(wire.b()).tail());
    }

    /** Along new wires without a fuse, the longest way where several lead to it. */
    private Length fromSource(Wire wire, Set<String> seen) {
        seen.add(wire.id());
        Length before = Length.ZERO;
        for (Wire other : unfused) {
            if (!isOriginal(other)
                    && !seen.contains(other.id())
                    && far(other).isOnSamePointAs(near(wire))) {
                Length way = fromSource(other, seen);
                before = way.isLongerThan(before) ? way : before;
            }
        }
        return before.plus(length(wire));
    }

    private Sourced<Length> within(Wire wire) {
        if (loom.getDevice(near(wire).device()).kind() == DeviceKind.BATTERY) {
            return rules.fuseWithinBattery();
        }
        return routes.lengthOf(wire).isPositive()
                ? rules.fuseWithinCovered()
                : rules.fuseWithinBare();
    }

    private Problem unfused(Wire wire) {
        String text =
                "Wire %s (%s, %s, %s) is new and has no fuse between %s and itself; it is fed from the %s."
                        .formatted(
                                wire.id(),
                                wire.circuit(),
                                wire.size(),
                                Words.metres(length(wire)),
                                near(wire).place(),
                                tracing.get(wire.id()).supply().words());
        return Problem.told(
                ElectricalFinding.of(
                        Finding.warning("electrical.unfused-new", subject(wire), text),
                        "Feed it from behind a fuse, or put one where it begins."));
    }

    private Problem tooFar(Wire wire, Length way, Sourced<Length> within) {
        String text =
                "The fuse at %s lies %s away along new wire without a fuse, the last of it wire %s from %s; a fuse should sit within %s of its source (%s)."
                        .formatted(
                                far(wire).place(),
                                Words.millimetres(way),
                                wire.id(),
                                near(wire).place(),
                                Words.millimetres(within.value()),
                                Words.of(within.provenance()));
        return Problem.told(
                new ElectricalFinding(
                        Finding.warning("electrical.fuse-far-from-source", subject(wire), text),
                        "",
                        Words.millimetres(way),
                        Words.millimetres(within.value()),
                        within.provenance(),
                        "Move the fuse nearer to %s.".formatted(near(wire).place())));
    }

    private Problem original(String circuit, List<Wire> wires) {
        Length metres = Length.sum(wires.stream().map(this::length).toList());
        String text =
                "Circuit '%s' has %s of live wire without a fuse (%s), as original."
                        .formatted(
                                circuit,
                                Words.metres(metres),
                                wires.stream().map(Wire::id).collect(Collectors.joining(", ")));
        return Problem.told(
                ElectricalFinding.of(
                        Finding.note(
                                "electrical.unfused-original", subject(wires.getFirst()), text),
                        ""));
    }

    private static Subject subject(Wire wire) {
        return Subject.of(ThingKind.WIRE, wire.id());
    }
}
