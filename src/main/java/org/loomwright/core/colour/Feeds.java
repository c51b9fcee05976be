package org.loomwright.core.colour;

import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.colour.code.ColourCode;
import org.loomwright.core.colour.code.ColourFunction;
import org.loomwright.core.colour.code.Leg;
import org.loomwright.core.colour.code.SupplyColour;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Wire;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Whether a colour agrees with what a wire is fed from. */
final class Feeds {

    private static final Set<Leg> EARTHY = EnumSet.of(Leg.EARTH_SWITCHED, Leg.SENDER);

    private final TracedLoom traced;
    private final ColourCode code;

    Feeds(TracedLoom traced, ColourCode code) {
        this.traced = traced;
        this.code = code;
    }

    /** Whether a wire of that colour, with that function, may be fed like this. */
    boolean agrees(ColourFunction function, WireTrace trace) {
        boolean isOnEarthSide =
                EARTHY.contains(function.leg()) && code.hasEarthBody(function.colour());
        boolean isBehindRelay =
                function.leg() == Leg.AFTER_RELAY && code.hasEarthBody(function.colour());
        return function.leg() == Leg.FIELD
                || isOnEarthSide
                || isBehindRelay
                || agrees(function.colour(), trace);
    }

    /** Whether the rule for bodies alone lets a wire of that colour be fed like this. */
    boolean agreesByBody(WireColour colour, WireTrace trace) {
        return code.suppliesOf(new WireColour(colour.body(), null)).stream()
                .anyMatch(row -> row.supply() == trace.supply());
    }

    /**
     * Whether the body colour belongs to what the wire is fed from. Behind a relay it may also belong to what works the relay, as the
     * published colours of headlamp relays do.
     */
    boolean agrees(WireColour colour, WireTrace trace) {
        if (trace.role() == Role.RETURN || trace.role() == Role.EARTH_SIDE) {
            if (code.hasEarthBody(colour)) {
                return true;
            }
        }
        Set<Supply> fed = trace.role() == Role.RETURN ? Set.of() : supplies(trace);
        return code.suppliesOf(colour).stream()
                .map(SupplyColour::supply)
                .anyMatch(supply -> supply != null && fed.contains(supply));
    }

    private Set<Supply> supplies(WireTrace trace) {
        Set<Supply> supplies = EnumSet.of(trace.supply());
        lastRelay(trace).ifPresent(relay -> addWorking(relay, supplies));
        return supplies;
    }

    private Optional<Passed> lastRelay(WireTrace trace) {
        return trace.path().reversed().stream()
                .filter(it -> it.element() == Element.MAKE || it.element() == Element.BREAK)
                .filter(it -> traced.loom().getDevice(it.device()).kind() == DeviceKind.RELAY)
                .findFirst();
    }

    private void addWorking(Passed relay, Set<Supply> supplies) {
        for (Wire wire : traced.loom().wires().values()) {
            if (isAtCoil(wire, relay) && traced.trace(wire).role() == Role.LIVE) {
                supplies.add(traced.trace(wire).supply());
            }
        }
    }

    private static boolean isAtCoil(Wire wire, Passed relay) {
        return isAtCoil(wire.a().device(), wire.a().point(), relay)
                || isAtCoil(wire.b().device(), wire.b().point(), relay);
    }

    private static boolean isAtCoil(String device, String point, Passed relay) {
        return device.equals(relay.device())
                && !point.equals(relay.from())
                && !point.equals(relay.to());
    }
}
