package org.loomwright.core.amendment;

import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;

import java.util.Locale;

/** The amendments that concern wires. */
final class WireActs {

    private WireActs() {}

    static void add(Amendment.AddWire amendment, Step step) {
        Wire wire = amendment.wire();
        step.claim(ThingKind.WIRE, wire.id(), "/wire/id");
        for (Side side : Side.values()) {
            step.needPoint(wire.end(side), "/wire/" + letter(side), endOf(wire, side));
        }
        refuseIfToItself(wire, "/wire", step);
        if (step.isSound()) {
            step.loom().addWire(Tracked.made(wire, step.id()));
            step.writes(ThingKind.WIRE, wire.id(), "", "/wire");
            for (String aspect : new String[] {"colour", "size", "a", "b"}) {
                step.writes(ThingKind.WIRE, wire.id(), aspect, "/wire/" + aspect);
            }
        }
    }

    static void remove(Amendment.RemoveWire amendment, Step step) {
        step.needWire(amendment.wire())
                .ifPresent(
                        wire -> {
                            step.loom().removeWire(wire.now());
                            step.takesOut(ThingKind.WIRE, amendment.wire(), wire.isStock());
                        });
    }

    /** The new wire is new: a like-for-like replacement of an old one changes its condition. */
    static void replace(Amendment.ReplaceWire amendment, Step step) {
        step.needWire(amendment.wire())
                .ifPresent(
                        wire -> {
                            Wire old = wire.now();
                            Wire renewed =
                                    new Wire(
                                            old.id(),
                                            old.circuit(),
                                            amendment.colour(),
                                            amendment.size(),
                                            old.a(),
                                            old.b(),
                                            Condition.NEW);
                            if (changeTo(wire, renewed, step)) {
                                step.writes(ThingKind.WIRE, old.id(), "colour", "/colour");
                                step.writes(ThingKind.WIRE, old.id(), "size", "/size");
                            }
                        });
    }

    static void moveEnd(Amendment.MoveWireEnd amendment, Step step) {
        step.needWire(amendment.wire())
                .ifPresentOrElse(
                        wire -> moveEnd(wire, amendment, step), () -> needTarget(amendment, step));
    }

    private static void moveEnd(Tracked<Wire> wire, Amendment.MoveWireEnd amendment, Step step) {
        needTarget(amendment, step);
        Wire moved = wire.now().withEnd(amendment.side(), amendment.to());
        refuseIfToItself(moved, "/to", step);
        if (step.isSound() && changeTo(wire, moved, step)) {
            step.writes(ThingKind.WIRE, moved.id(), letter(amendment.side()), "/to");
        }
    }

    private static void needTarget(Amendment.MoveWireEnd amendment, Step step) {
        String end = "end %s of wire %s".formatted(amendment.side(), amendment.wire());
        step.needPoint(amendment.to(), "/to", end);
    }

    static void changeTerminal(Amendment.ChangeTerminal amendment, Step step) {
        Side side = amendment.side();
        step.needWire(amendment.wire())
                .ifPresent(
                        wire -> {
                            WireEnd end = wire.now().end(side);
                            WireEnd changed =
                                    new WireEnd(
                                            end.device(),
                                            end.point(),
                                            amendment.terminal(),
                                            end.fitted());
                            if (changeTo(wire, wire.now().withEnd(side, changed), step)) {
                                step.writes(
                                        ThingKind.WIRE,
                                        amendment.wire(),
                                        letter(side),
                                        "/terminal");
                            }
                        });
    }

    private static boolean changeTo(Tracked<Wire> wire, Wire to, Step step) {
        if (to.equals(wire.now())) {
            step.refuseUnchanged("wire %s is like that already".formatted(to.id()));
            return false;
        }
        step.loom().changeWire(wire, to, step.id());
        return true;
    }

    private static void refuseIfToItself(Wire wire, String pointer, Step step) {
        step.refuseUnless(
                !wire.a().isOnSamePointAs(wire.b()),
                "wire-to-itself",
                pointer,
                "wire %s would run from point %s to itself".formatted(wire.id(), wire.a().place()));
    }

    private static String endOf(Wire wire, Side side) {
        return "end %s of wire %s".formatted(side, wire.id());
    }

    private static String letter(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }
}
