package org.loomwright.core.electrical.tracing;

import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Loom;

import java.util.Locale;
import java.util.Optional;

/** Reads from a way what its wires are fed from. */
final class Supplies {

    private static final String IGNITION = "ignition";
    private static final String LIGHTING = "lighting";

    private final Loom loom;
    private final Catalogue catalogue;

    Supplies(Loom loom, Catalogue catalogue) {
        this.loom = loom;
        this.catalogue = catalogue;
    }

    Supply of(Reached reached) {
        Supply supply = Ways.isGenerator(reached) ? Supply.GENERATOR : Supply.BATTERY;
        for (Passed passed : reached.path()) {
            supply = after(supply, passed);
        }
        return supply;
    }

    private Supply after(Supply before, Passed passed) {
        return switch (passed.element()) {
            case FUSE -> afterFuse(before);
            case CONTACT -> afterSwitch(before, passed);
            case SOURCE,
                    GENERATOR,
                    CUT_OUT,
                    LINK,
                    COIL,
                    FIELD,
                    SENSE,
                    MAKE,
                    BREAK,
                    ENGINE_OFF,
                    LOAD,
                    EARTH,
                    NONE ->
                    before;
        };
    }

    private static Supply afterFuse(Supply before) {
        return switch (before) {
            case BATTERY -> Supply.BATTERY_FUSED;
            case IGNITION -> Supply.IGNITION_FUSED;
            case BATTERY_FUSED, IGNITION_FUSED, SIDE_LAMPS, HEADLAMPS, GENERATOR, NONE -> before;
        };
    }

    /** A switch may join ignition and lighting, so the names of its contacts decide before what it serves does. */
    private Supply afterSwitch(Supply before, Passed passed) {
        Device device = loom.getDevice(passed.device());
        String service = Tracing.serviceOf(device, catalogue).map(Service::code).orElse("");
        boolean isMain = service.equals(IGNITION) || service.equals(LIGHTING);
        if (device.kind() != DeviceKind.SWITCH || !isMain) {
            return before;
        }
        String contact = passed.to().toUpperCase(Locale.ROOT);
        if (contact.startsWith("HEAD")) {
            return Supply.HEADLAMPS;
        }
        if (contact.startsWith("SIDE") || contact.startsWith("TAIL")) {
            return Supply.SIDE_LAMPS;
        }
        if (contact.startsWith("START")) {
            return before;
        }
        boolean isIgnition = contact.startsWith("IGN") || service.equals(IGNITION);
        return isIgnition ? ignition(before) : before;
    }

    private static Supply ignition(Supply before) {
        return before == Supply.BATTERY_FUSED ? Supply.IGNITION_FUSED : Supply.IGNITION;
    }

    Optional<String> serviceOf(String device) {
        return Tracing.serviceOf(loom.getDevice(device), catalogue).map(Service::code);
    }
}
