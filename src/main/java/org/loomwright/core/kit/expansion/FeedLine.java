package org.loomwright.core.kit.expansion;

import org.loomwright.core.electrical.tracing.Passed;
import org.loomwright.core.electrical.tracing.WireTrace;
import org.loomwright.core.loom.Side;
import org.loomwright.core.loom.Wire;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The way from the source to a point of the loom, wire by wire. */
final class FeedLine {

    private final Draft draft;

    FeedLine(Draft draft) {
        this.draft = draft;
    }

    /** The wires from the source to a place, the nearest to it first. */
    List<Wire> to(String place) {
        List<Wire> wires = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        String at = place;
        while (seen.add(at)) {
            Wire wire = wireTo(at).orElse(null);
            if (wire != null) {
                wires.add(wire);
                at = sourceEnd(wire);
            } else {
                at = through(at);
            }
        }
        return wires;
    }

    private Optional<Wire> wireTo(String place) {
        return draft.loom.wires().values().stream()
                .filter(wire -> isLoadEnd(wire, draft.tracing.get(wire.id()), place))
                .findFirst();
    }

    private static boolean isLoadEnd(Wire wire, WireTrace trace, String place) {
        Side source = trace.source();
        return source != null && wire.end(source == Side.A ? Side.B : Side.A).place().equals(place);
    }

    private String sourceEnd(Wire wire) {
        Side source = draft.tracing.get(wire.id()).source();
        return wire.end(source == null ? Side.A : source).place();
    }

    /** The other side of what the way leads through last, if that ends at this place. */
    private String through(String place) {
        return draft.tracing
                .pathTo(place)
                .filter(path -> !path.isEmpty())
                .map(List::getLast)
                .filter(last -> place.equals(last.device() + "/" + last.to()))
                .map(last -> last.device() + "/" + last.from())
                .orElse(place);
    }

    /** The loads that hang on the far side of what is passed. */
    Set<String> behind(Passed passed) {
        String place = passed.device() + "/" + passed.to();
        Set<String> loads = new HashSet<>();
        for (Wire wire : draft.loom.wires().values()) {
            WireTrace trace = draft.tracing.get(wire.id());
            Side source = trace.source();
            if (source != null && wire.end(source).place().equals(place)) {
                loads.addAll(trace.loads());
            }
        }
        return loads;
    }
}
