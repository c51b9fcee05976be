package org.loomwright.core.kit.expansion;

import org.loomwright.core.kit.DevicePart;
import org.loomwright.core.kit.DevicePart.PointPart;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.CrossSection;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Chooses terminals: what is on the point already, or the usual one of its kind of device. */
final class Terminals {

    private static final String BLADE = "blade-6.3";
    private static final String PIGGYBACK = "blade-6.3-piggyback";

    private final Draft draft;
    private final Map<String, Integer> given = new HashMap<>();

    Terminals(Draft draft) {
        this.draft = draft;
    }

    /** The terminal there for a wire with that much metal. */
    String at(Place place, CrossSection conductor) {
        return draft.bench.terminals().fitting(at(place), conductor, draft.bench.catalogue());
    }

    private String at(Place place) {
        int before = given.merge(place.id(), 1, Integer::sum) - 1;
        Optional<String> there = commonest(place);
        if (there.isPresent()) {
            return shared(there.get());
        }
        UsualTerminals.Row usual = draft.bench.terminals().of(place.device().kind());
        String own = own(place).orElse(usual.terminal());
        if (before == 0) {
            return own;
        }
        return own.equals(usual.terminal()) ? usual.shared() : shared(own);
    }

    private static String shared(String terminal) {
        return terminal.equals(BLADE) ? PIGGYBACK : terminal;
    }

    private Optional<String> commonest(Place place) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Wire wire : draft.loom.wires().values()) {
            Stream.of(wire.a(), wire.b())
                    .filter(place::isEndOf)
                    .map(WireEnd::terminal)
                    .forEach(terminal -> counts.merge(terminal, 1, Integer::sum));
        }
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private Optional<String> own(Place place) {
        for (DevicePart part : draft.recipe.devices()) {
            if (place.device().equals(draft.made.get(part.key()))) {
                return part.points().stream()
                        .filter(point -> point.name().equals(place.point().name()))
                        .map(PointPart::terminal)
                        .filter(terminal -> terminal != null)
                        .findFirst();
            }
        }
        return Optional.empty();
    }
}
