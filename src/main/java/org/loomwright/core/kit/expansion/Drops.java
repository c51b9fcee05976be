package org.loomwright.core.kit.expansion;

import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.Service;
import org.loomwright.core.catalogue.Service.CircuitKind;
import org.loomwright.core.electrical.VoltageDrop;
import org.loomwright.core.electrical.WireResistance;
import org.loomwright.core.electrical.check.current.DropLimit;
import org.loomwright.core.electrical.check.current.Sourced;
import org.loomwright.core.electrical.tracing.Tracing;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.DevicePart;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.LinearResistance;
import org.loomwright.core.quantity.Ratio;
import org.loomwright.core.quantity.Voltage;
import org.loomwright.core.routing.CutLengths;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes wires larger until every new load keeps within the share of voltage that its kind of circuit may lose, out and back: first the
 * wire that loses most. Counts the loom's own wires before the feed with everything on, and a contact's resistance for each wire.
 */
final class Drops {

    private final Draft draft;
    private final Sizing sizing;
    private final List<Job> jobs;
    private final WireResistance resistance;

    Drops(Draft draft, Sizing sizing, List<Job> jobs) {
        this.draft = draft;
        this.sizing = sizing;
        this.jobs = jobs;
        this.resistance = new WireResistance(draft.bench.tables());
    }

    void keep() {
        for (DevicePart part : draft.recipe.devices()) {
            if (draft.made.containsKey(part.key())
                    && !draft.load(List.of(part.key())).equals(Current.ZERO)) {
                keep(part);
            }
        }
    }

    private void keep(DevicePart part) {
        List<Job> path =
                jobs.stream().filter(job -> job.part.carries().contains(part.key())).toList();
        DropLimit shares = shares(part);
        Voltage before = before(part.key());
        Voltage limit = volts(shares.limit());
        grow(path, left(volts(shares.aim()), before), draft.bench.settings().mostSteps());
        grow(path, left(limit, before), Integer.MAX_VALUE);
        if (lost(path).compareTo(left(limit, before)) > 0) {
            draft.refuse(
                    "drop",
                    "Even in the largest size %s would lose %s, %s of it in the loom before the feed; it may lose %s (%s)."
                            .formatted(
                                    draft.device(part.key()).name(),
                                    lost(path).plus(before),
                                    before,
                                    limit,
                                    shares.limit().provenance().source()));
        }
        tell(part, path, before, shares);
    }

    private void tell(DevicePart part, List<Job> path, Voltage before, DropLimit shares) {
        Voltage limit = volts(shares.limit());
        Voltage all = lost(path).plus(before);
        String text =
                "About %s is lost on the way to it and back at the worst, %s of it in the loom before the feed; new work should keep within %s, and must within %s."
                        .formatted(all, before, volts(shares.aim()), limit);
        draft.note(
                ThingKind.DEVICE,
                draft.device(part.key()).id(),
                "drop",
                all.compareTo(limit) > 0
                        ? text
                                + " It does not, because of the loom before the feed: look at that"
                                + " first."
                        : text,
                shares.limit().provenance());
    }

    /** What the kit's own wires may lose: what the loom before them leaves, and in any case half. */
    private static Voltage left(Voltage limit, Voltage before) {
        return Voltage.ofMillivolts(
                Math.max(limit.millivolts() - before.millivolts(), limit.millivolts() / 2));
    }

    /** Makes the wire that loses most larger, again and again, but none by more than so many sizes. */
    private void grow(List<Job> path, Voltage limit, int steps) {
        Map<Job, Integer> grown = new IdentityHashMap<>();
        while (lost(path).compareTo(limit) > 0) {
            Optional<Job> worst =
                    worst(path.stream().filter(job -> grown.getOrDefault(job, 0) < steps).toList());
            if (worst.isEmpty()) {
                return;
            }
            Job job = worst.get();
            job.size = sizing.next(sized(job)).orElseThrow();
            grown.merge(job, 1, Integer::sum);
        }
    }

    private DropLimit shares(DevicePart part) {
        CircuitKind kind =
                part.kind() == DeviceKind.RELAY
                        ? CircuitKind.CONTROL
                        : Tracing.serviceOf(draft.device(part.key()), draft.bench.catalogue())
                                .map(Service::kind)
                                .orElse(CircuitKind.GENERAL);
        DropLimit limit = draft.bench.rules().drops().get(kind);
        if (limit == null) {
            throw new IllegalStateException("no limit of drop for " + kind);
        }
        return limit;
    }

    private Voltage volts(Sourced<Ratio> share) {
        return Voltage.roundedFromVolts(
                draft.loom.document().vehicle().system().toDoubleVolts()
                        * share.value().toDouble());
    }

    private Optional<Job> worst(List<Job> path) {
        return path.stream()
                .filter(job -> sizing.next(sized(job)).isPresent())
                .max(Comparator.comparing(this::lostAlong));
    }

    private static ConductorSize sized(Job job) {
        ConductorSize size = job.size;
        if (size == null) {
            throw new IllegalStateException("a wire has no size yet");
        }
        return size;
    }

    private Voltage lost(List<Job> path) {
        return path.stream().map(this::lostAlong).reduce(Voltage.ZERO, Voltage::plus);
    }

    private Voltage lostAlong(Job job) {
        LinearResistance perMetre =
                resistance.perMetre(sized(job).designation(), draft.bench.settings().conductors());
        return VoltageDrop.along(job.load, perMetre, job.length)
                .plus(VoltageDrop.across(job.load, draft.bench.settings().electrical().contact()));
    }

    /** What the loom loses before the feed of that device, with everything on. */
    private Voltage before(String key) {
        List<Voltage> feeds = new ArrayList<>();
        for (Map.Entry<String, FeedChoice> entry : draft.feeds.entrySet()) {
            FeedChoice feed = entry.getValue();
            if (feed.part().feeds().contains(key)) {
                feeds.add(before(feed));
            }
        }
        return feeds.stream().max(Comparator.naturalOrder()).orElse(Voltage.ZERO);
    }

    private Voltage before(FeedChoice feed) {
        Addition added = Addition.of(draft, feed.part());
        CutLengths lengths =
                new CutLengths(
                        draft.loom,
                        draft.routes,
                        draft.bench.catalogue(),
                        draft.bench.settings().electrical().allowances(),
                        Map.of());
        Voltage sum = Voltage.ZERO;
        for (Wire wire : feed.line()) {
            Current current = added.in(wire.id());
            LinearResistance perMetre =
                    resistance.perMetre(
                            draft.renewed.getOrDefault(wire.id(), wire.size()),
                            draft.bench.settings().conductors());
            sum = sum.plus(VoltageDrop.along(current, perMetre, lengths.of(wire).measured()));
        }
        return sum;
    }
}
