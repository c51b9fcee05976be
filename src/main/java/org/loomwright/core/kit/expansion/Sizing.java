package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.electrical.Derating;
import org.loomwright.core.electrical.simulation.Readings;
import org.loomwright.core.electrical.simulation.Readings.WireReading;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.CrossSection;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Temperature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * Which sizes there are for new wires, and what each carries in its bundle: what is left in the worst of the standard scenarios, with
 * every wire of the kit loaded as well. A wire counts as loaded from a share of its rating on, as in the checks of currents.
 */
final class Sizing {

    private final Draft draft;
    private final List<ConductorSize> sizes;
    private final List<Surroundings> surroundings = new ArrayList<>();

    /** How many wires of the loom are loaded in each segment, and how warm it is there. */
    private record Surroundings(Map<String, Integer> loaded, Temperature ambient) {}

    Sizing(Draft draft) {
        this.draft = draft;
        this.sizes =
                draft.bench.catalogue().sizes().stream()
                        .filter(it -> it.designation().endsWith(draft.bench.settings().family()))
                        .sorted(Comparator.comparing(ConductorSize::metal))
                        .toList();
        draft.currents.readings().stream().map(this::surroundings).forEach(surroundings::add);
    }

    private Surroundings surroundings(Readings readings) {
        Map<String, Integer> loaded = new HashMap<>();
        for (WireReading reading : readings.wires()) {
            Wire wire = draft.loom.getWire(reading.wire());
            if (isLoaded(reading.current(), draft.bench.catalogue().getSize(wire.size()))) {
                draft.routes.of(wire).forEach(it -> loaded.merge(it.id(), 1, Integer::sum));
            }
        }
        return new Surroundings(loaded, readings.scenario().ambient());
    }

    private boolean isLoaded(Current current, ConductorSize size) {
        double share = draft.bench.rules().loadedFrom().value().toDouble();
        return current.milliamperes() != 0
                && Math.abs(current.toDoubleAmperes()) >= size.rating().toDoubleAmperes() * share;
    }

    /** What a size carries on the route of a job. */
    Derating derated(ConductorSize size, List<Job> jobs, Job self) {
        return worst(size, around -> 1 + fullest(self.route, around, jobs, self));
    }

    /** What a size carries on the route of a wire of the loom, which counts among the loaded ones there. */
    Derating derated(ConductorSize size, List<Segment> route) {
        return worst(size, around -> fullest(route, around, List.of(), null));
    }

    private Derating worst(ConductorSize size, ToIntFunction<Surroundings> wires) {
        return surroundings.stream()
                .map(around -> derated(size, Math.max(1, wires.applyAsInt(around)), around))
                .min(Comparator.comparing(Derating::left))
                .orElseGet(() -> Derating.of(size.rating()));
    }

    private Derating derated(ConductorSize size, int loaded, Surroundings around) {
        return Derating.of(size.rating())
                .inBundle(draft.bench.tables().bundleFactorFor(loaded))
                .atAmbient(draft.bench.rules().insulation().value(), around.ambient());
    }

    /** How many wires are loaded in the fullest segment of a route. */
    private int fullest(
            List<Segment> route, Surroundings around, List<Job> jobs, @Nullable Job self) {
        int most = 0;
        for (Segment segment : route) {
            long others =
                    jobs.stream()
                            .filter(job -> job != self && job.route.contains(segment))
                            .filter(job -> job.size != null && isLoaded(job.load, job.size))
                            .count();
            most = Math.max(most, (int) others + around.loaded().getOrDefault(segment.id(), 0));
        }
        return most;
    }

    Optional<ConductorSize> smallest(Job job, List<Job> jobs) {
        CrossSection least = leastMetal(job.part.least());
        return sizes.stream()
                .filter(size -> size.metal().compareTo(least) >= 0)
                .filter(size -> derated(size, jobs, job).left().compareTo(job.needed) >= 0)
                .findFirst();
    }

    /** The smallest size that carries so much by itself. */
    Optional<ConductorSize> smallestFor(Current needed) {
        return sizes.stream().filter(size -> size.rating().compareTo(needed) >= 0).findFirst();
    }

    /** The smallest size that carries so much by itself, and so much beside the loaded wires of a route. */
    Optional<ConductorSize> smallestFor(Current alone, Current inBundle, List<Segment> route) {
        return sizes.stream()
                .filter(size -> size.rating().compareTo(alone) >= 0)
                .filter(size -> derated(size, route).left().compareTo(inBundle) >= 0)
                .findFirst();
    }

    Optional<ConductorSize> next(ConductorSize size) {
        return sizes.stream().filter(it -> it.metal().compareTo(size.metal()) > 0).findFirst();
    }

    private CrossSection leastMetal(@Nullable String designation) {
        String least = designation == null ? draft.bench.settings().least() : designation;
        return draft.bench.catalogue().getSize(least).metal();
    }
}
