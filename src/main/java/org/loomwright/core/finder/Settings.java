package org.loomwright.core.finder;

import org.loomwright.core.colour.TracedLoom;
import org.loomwright.core.electrical.simulation.Element;
import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Role;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Point;
import org.loomwright.core.loom.Wire;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Which switches have a say in what a wire carries. */
final class Settings {

    private static final String FEED = "FEED";
    private static final String BODY = "body";

    /** Relays that work relays: deeper than any vehicle has them. */
    private static final int DEEPEST = 4;

    private final TracedLoom traced;

    Settings(TracedLoom traced) {
        this.traced = traced;
    }

    /**
     * A switch with one contact closed.
     *
     * @param device id of the switch
     * @param contact its contact
     */
    record Setting(String device, String contact) {

        String words() {
            return "%s (%s)".formatted(device, contact);
        }
    }

    /** What must be on for the source to reach the wire, or what stands before it. */
    Set<Setting> feeding(Wire wire) {
        return along(traced.tracing().get(wire.id()), 0);
    }

    private Set<Setting> along(WireTrace trace, int depth) {
        Set<Setting> settings = new LinkedHashSet<>();
        for (Passed passed : trace.path()) {
            if (passed.element() == Element.CONTACT && isSwitch(passed.device())) {
                settings.add(setting(passed));
            } else if (passed.element() == Element.MAKE && depth < DEEPEST) {
                settings.addAll(working(passed, depth + 1));
            }
        }
        return settings;
    }

    private boolean isSwitch(String device) {
        return traced.loom().getDevice(device).kind() == DeviceKind.SWITCH;
    }

    private static Setting setting(Passed passed) {
        boolean isReversed = passed.to().equals(FEED) || passed.to().equals(BODY);
        return new Setting(passed.device(), isReversed ? passed.from() : passed.to());
    }

    /** What makes a relay or a flasher unit pull in. */
    private Set<Setting> working(Passed make, int depth) {
        return traced.loom().getDevice(make.device()).kind() == DeviceKind.FLASHER
                ? behind(make.device())
                : atCoil(make, depth);
    }

    private Set<Setting> behind(String flasher) {
        for (WireTrace trace : traced.tracing().all()) {
            List<Passed> path = trace.path();
            for (int i = 0; i < path.size(); i++) {
                boolean isSensed =
                        path.get(i).device().equals(flasher)
                                && path.get(i).element() == Element.SENSE;
                if (isSensed && i + 1 < path.size() && isSwitch(path.get(i + 1).device())) {
                    return Set.of(setting(path.get(i + 1)));
                }
            }
        }
        return Set.of();
    }

    private Set<Setting> atCoil(Passed make, int depth) {
        Set<Setting> settings = new LinkedHashSet<>();
        for (Wire wire : traced.loom().wires().values()) {
            WireTrace trace = traced.tracing().get(wire.id());
            if (isAtCoil(wire, make) && trace.role() == Role.LIVE) {
                settings.addAll(along(trace, depth));
            } else if (isAtCoil(wire, make) && trace.role() == Role.EARTH_SIDE) {
                settings.addAll(earthing(wire));
            }
        }
        return settings;
    }

    private static boolean isAtCoil(Wire wire, Passed make) {
        return isAtCoil(wire.a().device(), wire.a().point(), make)
                || isAtCoil(wire.b().device(), wire.b().point(), make);
    }

    private static boolean isAtCoil(String device, String point, Passed make) {
        return device.equals(make.device())
                && !point.equals(make.from())
                && !point.equals(make.to());
    }

    /** The switches that join the wire to the body: those on its net from which the body can be reached. */
    Set<Setting> earthing(Wire wire) {
        Set<Setting> settings = new LinkedHashSet<>();
        if (traced.tracing().get(wire.id()).role() != Role.EARTH_SIDE) {
            return settings;
        }
        for (Device device : traced.loom().devices().values()) {
            for (Point point : device.points()) {
                boolean isContact =
                        device.kind() == DeviceKind.SWITCH && !point.name().equals(FEED);
                if (isContact
                        && traced.isJoined(wire.a().place(), device.id() + "/" + point.name())) {
                    settings.add(new Setting(device.id(), point.name()));
                }
            }
        }
        return settings;
    }
}
