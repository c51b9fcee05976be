package org.loomwright.core.colour;

import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.Supply;
import org.loomwright.core.electrical.tracing.WireTrace;

import java.util.stream.Collectors;

/** What tracing found, in words. */
public final class PathWords {

    private PathWords() {}

    /** @return how the wire stands in its circuit, for example {@code live, fed from the ignition fused, by AMMETER, IGN-SWITCH (IGN)} */
    public static String of(WireTrace trace) {
        return switch (trace.role()) {
            case LIVE -> "live, %s%s".formatted(fedFrom(trace), by(trace));
            case EARTH_SIDE ->
                    trace.supply() == Supply.NONE
                            ? "on the earth side of something that this loom does not feed"
                            : "on the earth side of what is %s%s"
                                    .formatted(fedFrom(trace), by(trace));
            case RETURN -> "an earth: copper and earth screws alone join it to the body";
            case LOOSE -> "joined neither to a source nor to the body";
        };
    }

    private static String fedFrom(WireTrace trace) {
        return switch (trace.supply()) {
            case BATTERY -> "fed from the battery without a fuse";
            case BATTERY_FUSED -> "fed from the battery through a fuse";
            case IGNITION -> "fed from the ignition switch without a fuse";
            case IGNITION_FUSED -> "fed from the ignition switch through a fuse";
            case SIDE_LAMPS -> "fed from the side-lamp contact of the lighting switch";
            case HEADLAMPS -> "fed from the headlamp contact of the lighting switch";
            case GENERATOR -> "fed from the generator";
            case NONE -> "fed from nothing";
        };
    }

    private static String by(WireTrace trace) {
        return trace.path().isEmpty()
                ? ""
                : ", by "
                        + trace.path().stream()
                                .map(PathWords::words)
                                .collect(Collectors.joining(", "));
    }

    private static String words(Passed passed) {
        String pair = "%s %s to %s".formatted(passed.device(), passed.from(), passed.to());
        return switch (passed.element()) {
            case FUSE -> "fuse " + pair;
            case CONTACT, MAKE, BREAK -> "%s (%s)".formatted(passed.device(), passed.to());
            case SOURCE,
                    GENERATOR,
                    CUT_OUT,
                    LINK,
                    COIL,
                    FIELD,
                    SENSE,
                    ENGINE_OFF,
                    LOAD,
                    EARTH,
                    NONE ->
                    passed.device();
        };
    }
}
