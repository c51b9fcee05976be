package org.loomwright.core.colour;

import org.loomwright.core.colour.code.Leg;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.WireEnd;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which legs a wire is, the closest description first. The switches for ignition and lighting make the supply and do not count as
 * switches of a circuit, unless it is their contact for the starter.
 */
final class Legs {

    private static final Set<String> MAIN_SWITCHES = Set.of("ignition", "lighting");

    private final TracedLoom traced;
    private final WireTrace trace;
    private final WireEnd near;
    private final WireEnd far;

    private Legs(TracedLoom traced, WireTrace trace, WireEnd a, WireEnd b) {
        this.traced = traced;
        this.trace = trace;
        boolean fromB = trace.source() == Side.B;
        near = fromB ? b : a;
        far = fromB ? a : b;
    }

    static Set<Leg> of(TracedLoom traced, WireTrace trace, WireEnd a, WireEnd b) {
        return new LinkedHashSet<>(new Legs(traced, trace, a, b).legs());
    }

    private List<Leg> legs() {
        if (isField()) {
            return List.of(Leg.FIELD);
        }
        return switch (trace.role()) {
            case RETURN -> List.of(Leg.EARTH);
            case LOOSE -> List.of();
            case EARTH_SIDE ->
                    endsAt(DeviceKind.SENDER) || startsAtGauge()
                            ? List.of(Leg.SENDER, Leg.EARTH_SWITCHED)
                            : List.of(Leg.EARTH_SWITCHED, Leg.SENDER);
            case LIVE -> live();
        };
    }

    private boolean isField() {
        return near.point().equals("F") && far.point().equals("F");
    }

    private boolean endsAt(DeviceKind kind) {
        return kindAt(far) == kind || kindAt(near) == kind;
    }

    private boolean startsAtGauge() {
        return trace.last(Element.LOAD)
                .map(load -> traced.loom().getDevice(load.device()).kind() == DeviceKind.GAUGE)
                .orElse(false);
    }

    private DeviceKind kindAt(WireEnd end) {
        return traced.loom().getDevice(end.device()).kind();
    }

    private List<Leg> live() {
        if (trace.supply() == Supply.GENERATOR) {
            return List.of(Leg.GENERATOR);
        }
        List<Passed> own = own();
        List<Leg> legs = new ArrayList<>();
        lastSwitching(own).ifPresentOrElse(passed -> addBehind(passed, legs), () -> addFeed(legs));
        if (hasOwnFuse(own)) {
            legs.add(Leg.OWN_FUSE);
        }
        return legs;
    }

    /** What the way leads through behind the main switches. */
    private List<Passed> own() {
        List<Passed> path = trace.path();
        int first = 0;
        for (int i = 0; i < path.size(); i++) {
            if (isMainSwitch(path.get(i))) {
                first = i + 1;
            }
        }
        return path.subList(first, path.size());
    }

    private boolean isMainSwitch(Passed passed) {
        return passed.element() == Element.CONTACT
                && MAIN_SWITCHES.contains(traced.serviceOf(passed.device()))
                && !passed.to().toUpperCase(Locale.ROOT).startsWith("START");
    }

    private static Optional<Passed> lastSwitching(List<Passed> path) {
        return path.reversed().stream().filter(Legs::isSwitching).findFirst();
    }

    static boolean isSwitching(Passed passed) {
        return switch (passed.element()) {
            case CONTACT, MAKE, BREAK, SENSE -> true;
            case SOURCE,
                    GENERATOR,
                    CUT_OUT,
                    LINK,
                    FUSE,
                    COIL,
                    FIELD,
                    ENGINE_OFF,
                    LOAD,
                    EARTH,
                    NONE ->
                    false;
        };
    }

    private void addBehind(Passed passed, List<Leg> legs) {
        if (traced.loom().getDevice(passed.device()).kind() == DeviceKind.FLASHER) {
            legs.add(Leg.AFTER_FLASHER);
            return;
        }
        if (passed.element() != Element.CONTACT) {
            legs.add(Leg.AFTER_RELAY);
        }
        String contact = passed.to().toUpperCase(Locale.ROOT);
        if (contact.startsWith("MAIN")) {
            legs.add(Leg.MAIN_BEAM);
        } else if (contact.startsWith("DIP")) {
            legs.add(Leg.DIPPED_BEAM);
        }
        legs.add(Leg.AFTER_SWITCH);
    }

    private void addFeed(List<Leg> legs) {
        boolean isBehindAmmeter =
                !trace.path().isEmpty()
                        && traced.loom().getDevice(trace.path().getLast().device()).kind()
                                == DeviceKind.AMMETER;
        DeviceKind end = kindAt(far);
        if (isBehindAmmeter) {
            legs.add(Leg.AFTER_AMMETER);
        } else if (end == DeviceKind.SWITCH) {
            legs.add(Leg.SWITCH_FEED);
        } else if (end == DeviceKind.RELAY) {
            legs.add(Leg.RELAY_FEED);
        } else if (end == DeviceKind.FUSE || end == DeviceKind.FUSE_BOX) {
            legs.add(Leg.FUSE_FEED);
        }
        legs.add(Leg.FEED);
    }

    /** A fuse behind a switch of the circuit, or behind the lighting switch. */
    private boolean hasOwnFuse(List<Passed> own) {
        boolean behindSwitch =
                trace.supply() == Supply.SIDE_LAMPS || trace.supply() == Supply.HEADLAMPS;
        for (Passed passed : own) {
            if (behindSwitch && passed.element() == Element.FUSE) {
                return true;
            }
            behindSwitch |= isSwitching(passed);
        }
        return false;
    }
}
